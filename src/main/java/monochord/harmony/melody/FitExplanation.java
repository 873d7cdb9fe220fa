package monochord.harmony.melody;

import java.util.List;
import java.util.Optional;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Degree;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/** What a teacher would say about a note over its chord. */
public final class FitExplanation {
    /** Where an nth would be hard to think of. */
    private static final int SMALL = 10;

    /** How much of {@link FitExplanation} is custom rather than rule, to be said once beside it. */
    public static final Phrase ADVICE = Phrase.sentence(
            "Which colours a tune may rest on is custom, not law: take it as advice, and trust your ear.");

    private static final Phrase.Forms CLASHES =
            new Phrase.Forms("{0} note clashes", "{0} notes clash", "nothing clashes");
    private static final int HALF_STEP = 1;

    private FitExplanation() {}

    /** One or two sentences. */
    public static Phrase say(FitNote note, Fit fit) {
        Pitch sung = note.pitch();
        if (note.role() == NoteRole.FREE) {
            return Phrase.sentence("{0} comes before any chord, so it is free.", sung);
        }
        Chord chord = note.span().chord();
        return switch (note.role()) {
            case CHORD_TONE -> chordTone(sung, chord);
            case TENSION -> tension(note, chord);
            case PASSING -> Phrase.sentence("{0} passes by step over {1}.", sung, chord);
            case NEIGHBOUR -> Phrase.sentence("{0} steps away and comes back over {1}.", sung, chord);
            case SUSPENSION ->
                Phrase.sentence(
                        "{0} is held over from before and goes on by step: a suspension over {1}.", sung, chord);
            case ANTICIPATION -> Phrase.sentence("{0} comes early: it belongs to the next chord.", sung);
            case ESCAPE ->
                Phrase.sentence("{0} is reached by step and left by a leap: it escapes over {1}.", sung, chord);
            case APPOGGIATURA -> Phrase.sentence("{0} leans on the next note over {1}.", sung, chord);
            default -> clash(note, chord).then(advice(note, fit));
        };
    }

    /** What is said of each note that is more than a tone of its chord, each sentence once. */
    public static List<Phrase> remarks(Fit fit) {
        return fit.notes().stream()
                .filter(note -> note.role() != NoteRole.CHORD_TONE && note.role() != NoteRole.FREE)
                .map(note -> say(note, fit))
                .distinct()
                .toList();
    }

    /** How many notes clash, and what they weigh. */
    public static Phrase summary(Fit fit) {
        int clashes = fit.clashes().size();
        Phrase counted = Phrase.counted(clashes, CLASHES, Phrase.number(clashes));
        return clashes == 0
                ? Phrase.sentence("{0}.", counted)
                : Phrase.sentence("{0}; by beat and length that is {1}.", counted, share(fit));
    }

    /** How much of the tune clashes, as one says it. */
    private static Phrase share(Fit fit) {
        double parts = (double) fit.weight() / fit.friction();
        if (parts > SMALL) {
            return Phrase.of("a small part of the tune");
        } else if (parts >= 2.5) {
            return Phrase.of("about one {0} of the tune", MusicWords.ordinal((int) Math.round(parts)));
        } else if (parts >= 1.7) {
            return Phrase.of("about half of the tune");
        }
        return parts >= 1.25 ? Phrase.of("about two thirds of the tune") : Phrase.of("nearly all of the tune");
    }

    private static Phrase tension(FitNote note, Chord chord) {
        Phrase place = beyond(note.pitch().name(), chord.root());
        return note.standing() == Standing.TENSE
                ? Phrase.sentence("{0} colours {1} as its {2}, a sharp colour: mean it.", note.pitch(), chord, place)
                : Phrase.sentence("{0} colours {1} as its {2}.", note.pitch(), chord, place);
    }

    private static Phrase chordTone(Pitch pitch, Chord chord) {
        NoteName sung = pitch.name();
        Optional<NoteName> tone =
                chord.tones().stream().filter(sung::soundsLike).findFirst();
        if (tone.isEmpty()) {
            return Phrase.sentence("{0} is the bass note of {1}.", pitch, chord);
        }
        Phrase place = place(tone.get(), chord);
        return tone.get().equals(sung)
                ? Phrase.sentence("{0} is the {1} of {2}.", pitch, place, chord)
                : Phrase.sentence("{0} sounds as {1}, the {2} of {3}.", pitch, tone.get(), place, chord);
    }

    /** Which of the chord's own tones it is: {@code root}, {@code third}, {@code thirteenth}. */
    private static Phrase place(NoteName tone, Chord chord) {
        Interval above = chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).equals(tone))
                .findFirst()
                .orElseThrow();
        return above.number() == 1 ? Phrase.of("root") : MusicWords.number(above.number());
    }

    /**
     * What a note from outside the chord is above its root, by its letter: a second and a raised fourth as players call them
     * over a chord, {@code raised eleventh}; a third and a seventh by their quality, {@code major seventh}.
     */
    static Phrase beyond(NoteName note, NoteName root) {
        Degree above = Degree.ofFifths(note.fifths() - root.fifths());
        int alteration = above.alteration();
        return switch (above.number()) {
            case 1 -> Phrase.of("{0}", above.interval().plus(Interval.OCTAVE));
            case 3, 7 -> Phrase.of("{0}", above.interval());
            case 2 -> MusicWords.altered(alteration, 9);
            case 4 -> MusicWords.altered(alteration, alteration > 0 ? 11 : 4);
            default -> MusicWords.altered(alteration, above.number());
        };
    }

    private static int above(NoteName note, NoteName root) {
        return Math.floorMod(note.pitchClass() - root.pitchClass(), 12);
    }

    private static Phrase clash(FitNote note, Chord chord) {
        return note.standing() == Standing.SUSPENSION_ONLY
                ? Phrase.sentence(
                        "{0} is the fourth over {1}: good as a suspension that falls, not to rest on.",
                        note.pitch(), chord)
                : rubbed(note.pitch().name(), chord)
                        .map(tone -> Phrase.sentence("{0} rubs against the {1} of {2}.", note.pitch(), tone, chord))
                        .orElseGet(() -> Phrase.sentence("{0} does not settle over {1}.", note.pitch(), chord));
    }

    /** The tone of the chord a half step away, the lower one first. */
    private static Optional<NoteName> rubbed(NoteName sung, Chord chord) {
        return chord.tones().stream()
                .filter(tone -> isHalfStep(above(sung, tone)))
                .min((one, other) -> Integer.compare(above(sung, one), above(sung, other)));
    }

    private static boolean isHalfStep(int above) {
        return above == HALF_STEP || above == 12 - HALF_STEP;
    }

    private static Phrase advice(FitNote note, Fit fit) {
        return note.change()
                .map(change -> fit.progression().key().holds(change.to().name())
                        ? Phrase.sentence("Sing {0} there, or change the chord.", change.to())
                        : Phrase.sentence("Sing {0} there, the chord's own colour, or change the chord.", change.to()))
                .orElseGet(() -> Phrase.sentence("Nothing near fits: change the chord."));
    }
}
