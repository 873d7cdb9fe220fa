package monochord.practice.answer;

import java.util.List;
import java.util.Optional;
import monochord.practice.Misconception;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * What differs between a chord that was named and the one that is due, found once: root, tones, bass, in this order.
 *
 * @param notes the same of their tones
 */
public record ChordDifference(Chord given, Chord due, NoteDifference notes) {
    private static final int OCTAVE = 12;

    static ChordDifference of(Chord given, Chord due) {
        return new ChordDifference(given, due, NoteDifference.of(given.tones(), due.tones()));
    }

    boolean isRootRight() {
        return given.root().equals(due.root());
    }

    boolean isKindRight() {
        return given.kind().equals(due.kind());
    }

    /** Whether the bass is the one that is due; where a chord stands on its root, the bass is left open. */
    boolean isBassRight() {
        return !due.isInverted() || given.bass().equals(due.bass());
    }

    boolean isNothing() {
        return isRootRight() && isKindRight() && isBassRight();
    }

    /** What leads to it. */
    Misconception misconception() {
        if (!isRootRight()) {
            return Misconception.WRONG_DEGREE;
        } else if (isKindRight()) {
            return Misconception.WRONG_BASS;
        } else if (notes.strange().isEmpty()) {
            return Misconception.MISSING_NOTE;
        }
        return notes.missing().isEmpty() ? Misconception.EXTRA_NOTE : Misconception.WRONG_QUALITY;
    }

    /** What is off where the root is right, and nothing of what is missing by its name. */
    Phrase said() {
        if (isKindRight()) {
            return bass();
        } else if (notes.strange().isEmpty()) {
            return Phrase.sentence("The root is right. {0} leaves out {1}.", given, missing(due, notes.missing()));
        } else if (notes.missing().isEmpty()) {
            return extra(notes.strange());
        }
        NoteName tone = notes.missing().get(0);
        return Phrase.sentence("The root is right. The {0} {1}", place(due, tone), measure(due, tone));
    }

    /** Everything is there, and more. */
    static Phrase extra(List<NoteName> strange) {
        return Phrase.sentence("The whole chord is there.")
                .then(Phrase.counted(
                        strange.size(),
                        "{0} is one note too many.",
                        "{0} are {1} notes too many.",
                        Phrase.list(strange),
                        Phrase.number(strange.size())));
    }

    private Phrase bass() {
        return given.isInverted()
                ? Phrase.sentence("The chord is right; another of its notes lies in the bass, not {0}.", given.bass())
                : Phrase.sentence("The chord is right. Say its bass as well: not the root is lowest.");
    }

    /** {@code In C7 the third lies four half steps above the root.}: the first tone in which another chord differs. */
    public static Phrase firstOff(Chord due, Chord given) {
        NoteName tone = due.tones().stream()
                .filter(note -> !given.holds(note))
                .findFirst()
                .orElse(due.root());
        return Phrase.sentence("In {0} the {1} {2}", MusicWords.triad(due), place(due, tone), measure(due, tone));
    }

    /** {@code third}: the place of one of the chord's own tones in its stack. */
    static Phrase place(Chord chord, NoteName tone) {
        Interval above = above(chord, tone);
        return above.number() == 1 ? Phrase.of("root") : MusicWords.number(above.number());
    }

    /** {@code the third and the fifth}. */
    static Phrase missing(Chord chord, List<NoteName> missing) {
        return Phrase.list(missing.stream()
                .map(tone -> Phrase.of("the {0}", place(chord, tone)))
                .toList());
    }

    static Interval above(Chord chord, NoteName tone) {
        return chord.kind().intervals().stream()
                .filter(interval -> chord.root().plus(interval).equals(tone))
                .findFirst()
                .orElse(Interval.UNISON);
    }

    /** How a tone is reached from the root; with a full stop. */
    static Phrase measure(Chord chord, NoteName tone) {
        int up = above(chord, tone).semitones();
        return up > OCTAVE
                ? Phrase.of("lies {0} above the octave of the root.", MusicWords.steps(up - OCTAVE))
                : Phrase.of("lies {0} above the root.", MusicWords.steps(up));
    }

    /** Steps towards a tone of the chord that is missing, and not its name. */
    static List<Phrase> towards(Chord chord, NoteDifference notes) {
        Optional<NoteName> missing = notes.missing().stream().findFirst();
        if (missing.isEmpty()) {
            return List.of(
                    Phrase.counted(
                            notes.strange().size(),
                            "Every note of the chord is there, and one besides that is not of it.",
                            "Every note of the chord is there, and {0} besides that are not of it.",
                            Phrase.number(notes.strange().size())),
                    Phrase.sentence(
                            "Go up from {0}, tone by tone, and ask of each what it is called there.", chord.root()),
                    Phrase.sentence(
                            "{0} has {1} notes; the rest goes.",
                            chord, Phrase.number(chord.tones().size())));
        }
        NoteName tone = missing.get();
        Phrase place = place(chord, tone);
        if (tone.equals(chord.root())) {
            return List.of();
        }
        return List.of(
                notes.confirmed().then(Phrase.sentence("Look at the {0}.", place)),
                Phrase.sentence("Count letters up to the {0}, with {1} as the first.", place, chord.root()),
                Phrase.sentence("From {0} the {1} {2}", chord.root(), place, measure(chord, tone)));
    }
}
