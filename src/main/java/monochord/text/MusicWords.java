package monochord.text;

import java.util.List;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.TriadQuality;
import monochord.theory.note.Interval;
import monochord.theory.note.IntervalNumber;
import monochord.theory.note.NoteName;

/** Small words of music that several rooms say. */
public final class MusicWords {
    private MusicWords() {}

    /** {@code third}, {@code octave}, {@code thirteenth}: the number of an interval, 1 for a unison. */
    public static Phrase number(int number) {
        return switch (number) {
            case 1 -> Phrase.of("unison");
            case 2 -> Phrase.of("second");
            case 3 -> Phrase.of("third");
            case 4 -> Phrase.of("fourth");
            case 5 -> Phrase.of("fifth");
            case 6 -> Phrase.of("sixth");
            case 7 -> Phrase.of("seventh");
            case 8 -> Phrase.of("octave");
            case 9 -> Phrase.of("ninth");
            case 10 -> Phrase.of("tenth");
            case 11 -> Phrase.of("eleventh");
            case 12 -> Phrase.of("twelfth");
            case 13 -> Phrase.of("thirteenth");
            case 14 -> Phrase.of("fourteenth");
            case 15 -> Phrase.of("fifteenth");
            default -> Phrase.of("{0}th", number);
        };
    }

    /** The same with its article: {@code a third}, {@code an octave}. */
    public static Phrase oneNumber(int number) {
        return Phrase.of("{0}", new IntervalNumber(number));
    }

    /** What a chord calls a tone above its root: {@code lowered ninth}, {@code raised eleventh}, {@code thirteenth}. */
    public static Phrase altered(int alteration, int number) {
        Phrase plain = number(number);
        return switch (alteration) {
            case 0 -> plain;
            case 1 -> Phrase.of("raised {0}", plain);
            case -1 -> Phrase.of("lowered {0}", plain);
            case 2 -> Phrase.of("doubly raised {0}", plain);
            case -2 -> Phrase.of("doubly lowered {0}", plain);
            default -> alteration > 0 ? Phrase.of("much raised {0}", plain) : Phrase.of("much lowered {0}", plain);
        };
    }

    /** {@code 1 half step}, {@code 5 half steps}. */
    public static Phrase halfSteps(int count) {
        return Phrase.counted(count, "{0} half step", "{0} half steps", count);
    }

    /** {@code a half step}, {@code four half steps}. */
    public static Phrase halfStepsInWords(int count) {
        return Phrase.counted(count, "a half step", "{0} half steps", Phrase.number(count));
    }

    /** {@code a half step}, {@code a whole step}, {@code three half steps}. */
    public static Phrase steps(int halfSteps) {
        return halfSteps == 2 ? Phrase.of("a whole step") : halfStepsInWords(halfSteps);
    }

    /** {@code C minor} for a triad in thirds, for any other chord its symbol. */
    public static Phrase triad(Chord chord) {
        ChordKind kind = chord.kind();
        boolean inThirds = kind.equals(kind.triad())
                && kind.interval(3).isPresent()
                && kind.intervals().size() == 3;
        return inThirds ? Phrase.of("{0} {1}", chord.root(), quality(kind.quality())) : Phrase.of("{0}", chord);
    }

    /** {@code minor}. */
    public static Phrase quality(TriadQuality quality) {
        return switch (quality) {
            case MAJOR -> Phrase.of("major");
            case MINOR -> Phrase.of("minor");
            case DIMINISHED -> Phrase.of("diminished");
            case AUGMENTED -> Phrase.of("augmented");
            case SUSPENDED -> Phrase.of("suspended");
            case OPEN -> Phrase.of("open");
        };
    }

    /** {@code first}, {@code sixth}: a degree of the scale, or a place in a row; up to the eighth in words. */
    public static Phrase ordinal(int number) {
        return switch (number) {
            case 1 -> Phrase.of("first");
            case 8 -> Phrase.of("eighth");
            default -> number(number);
        };
    }

    /** {@code a half step}, {@code a whole step}; {@code an augmented second}: an interval of two letters. */
    public static Phrase step(Interval second) {
        return switch (Math.abs(second.semitones())) {
            case 1 -> Phrase.of("a half step");
            case 2 -> Phrase.of("a whole step");
            default -> Phrase.one(second.size());
        };
    }

    /** {@code no sharps or flats}; {@code two sharps, F♯ and C♯}; what is not printed is said to be so. */
    public static Phrase signature(Key key) {
        List<NoteName> notes = key.signatureNotes();
        if (key.signature() == 0) {
            return Phrase.of("no sharps or flats");
        } else if (!key.isInUse()) {
            return key.signature() > 0
                    ? Phrase.of("more than seven sharps, so no signature is printed for it")
                    : Phrase.of("more than seven flats, so no signature is printed for it");
        }
        int count = notes.size();
        return key.signature() > 0
                ? Phrase.counted(count, "{0} sharp, {1}", "{0} sharps, {1}", Phrase.number(count), Phrase.list(notes))
                : Phrase.counted(count, "{0} flat, {1}", "{0} flats, {1}", Phrase.number(count), Phrase.list(notes));
    }
}
