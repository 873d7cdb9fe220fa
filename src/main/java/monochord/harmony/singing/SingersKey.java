package monochord.harmony.singing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Instrument;
import monochord.harmony.Transposition;
import monochord.harmony.melody.Melody;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.Pitch;

/**
 * One key for a singer: where the tune lies in it, and how it reads.
 *
 * @param up from the key that was given
 * @param outside notes of the tune that the voice does not reach with ease
 * @param farthest half steps by which the farthest of them lies outside
 * @param dwells the lower and the upper end of where the tune is half of its time
 * @param offMiddle half steps from the middle of that to the middle of the voice, above zero if it lies higher
 * @param parts what each player reads
 */
public record SingersKey(
        Key key,
        Interval up,
        Melody melody,
        int outside,
        int farthest,
        List<Pitch> dwells,
        double offMiddle,
        List<PartKey> parts) {
    private static final int NEAR_THE_MIDDLE = 2;
    private static final int EASY_SIGNS = 3;
    private static final int PLEASANT_FRET = 4;
    private static final List<String> OPEN_MAJOR = List.of("C", "G", "D", "A", "E");
    private static final List<String> OPEN_MINOR = List.of("A", "E", "D");

    /** A player and the key in the player's part; a guitar's is that of the shapes above a capo. */
    public record PartKey(String name, Key key, int fret) {
        static PartKey of(String name, Key sounding) {
            return name.toLowerCase(java.util.Locale.ROOT).contains("guitar")
                    ? guitar(name, sounding)
                    : new PartKey(name, Transposition.written(sounding, Instrument.parse(name)), 0);
        }

        /** The open shapes that need the lowest fret. */
        private static PartKey guitar(String name, Key sounding) {
            for (int fret = 0; fret <= Transposition.HIGHEST_FRET; fret++) {
                Key shapes = Transposition.shapes(sounding, fret);
                String tonic = shapes.tonic().toString();
                if ((shapes.isMinor() ? OPEN_MINOR : OPEN_MAJOR).contains(tonic)) {
                    return new PartKey(name, shapes, fret);
                }
            }
            return new PartKey(name, sounding, 0);
        }

        int cost() {
            return Math.max(0, Math.abs(key.signature()) - EASY_SIGNS) + Math.max(0, fret - PLEASANT_FRET);
        }

        Phrase phrase() {
            return fret > 0
                    ? Phrase.of("{0} plays shapes of {1} above a capo on fret {2}", Phrase.typed(name), key, fret)
                    : Phrase.of("{0} reads {1}, {2}", Phrase.typed(name), key, MusicWords.signature(key));
        }
    }

    public Pitch low() {
        return end(-1);
    }

    public Pitch high() {
        return end(1);
    }

    private Pitch end(int sign) {
        Optional<Pitch> end = melody.notes().stream()
                .map(Melody.MelodyNote::pitch)
                .max((one, other) -> sign * Integer.compare(one.midiNumber(), other.midiNumber()));
        return end.orElseThrow();
    }

    public boolean fits() {
        return outside == 0;
    }

    /** How far off the middle it lies, as far as that matters. */
    double offset() {
        return Math.max(0, Math.abs(offMiddle) - NEAR_THE_MIDDLE);
    }

    /** Signs above three in what each player reads, the keyboard in the key itself. */
    int readingCost() {
        return Math.max(0, Math.abs(key.signature()) - EASY_SIGNS)
                + parts.stream().mapToInt(PartKey::cost).sum();
    }

    /** The reasons for and against it, the weightiest first. */
    public List<Phrase> why(VocalRange range) {
        List<Phrase> why = new ArrayList<>();
        why.add(
                fits()
                        ? Phrase.sentence(
                                "It goes from {0} to {1}, inside {2} to {3}.", low(), high(), range.low(), range.high())
                        : Phrase.counted(
                                outside,
                                "It goes from {1} to {2}: {0} note lies outside, {3} off at most.",
                                "It goes from {1} to {2}: {0} notes lie outside, {3} off at most.",
                                outside,
                                low(),
                                high(),
                                MusicWords.halfSteps(farthest)));
        why.add(dwelling());
        why.add(Phrase.sentence("The keyboard has {0}.", MusicWords.signature(key)));
        parts.forEach(part -> why.add(Phrase.sentence("{0}.", part.phrase())));
        why.add(distance());
        return why;
    }

    private Phrase dwelling() {
        Phrase where = dwells.get(0).equals(dwells.get(1))
                ? Phrase.of("{0}", dwells.get(0))
                : Phrase.of("{0} to {1}", dwells.get(0), dwells.get(1));
        int steps = (int) Math.round(Math.abs(offMiddle));
        if (offset() == 0) {
            return Phrase.sentence("It dwells on {0}, in the middle of the voice.", where);
        }
        return offMiddle > 0
                ? Phrase.sentence(
                        "It dwells on {0}, {1} above the middle of the voice.", where, MusicWords.halfSteps(steps))
                : Phrase.sentence(
                        "It dwells on {0}, {1} below the middle of the voice.", where, MusicWords.halfSteps(steps));
    }

    private Phrase distance() {
        int steps = up.semitones();
        return steps == 0
                ? Phrase.sentence("It is where it stands now.")
                : steps > 0
                        ? Phrase.sentence("That is {0} up.", MusicWords.halfSteps(steps))
                        : Phrase.sentence("That is {0} down.", MusicWords.halfSteps(-steps));
    }
}
