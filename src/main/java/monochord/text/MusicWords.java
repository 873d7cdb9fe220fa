package monochord.text;

import monochord.theory.Interval;

/** Small words of music that several rooms say. */
public final class MusicWords {
    private MusicWords() {}

    /** {@code third}, {@code octave}, {@code thirteenth}. @param number of an interval, from 1 for a unison */
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
        return switch (number) {
            case 8, 11, 18 -> Phrase.of("an {0}", number(number));
            default -> Phrase.of("a {0}", number(number));
        };
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

    /** {@code a half step}, {@code a whole step}; {@code an augmented second}. @param second an interval of two letters */
    public static Phrase step(Interval second) {
        return switch (Math.abs(second.semitones())) {
            case 1 -> Phrase.of("a half step");
            case 2 -> Phrase.of("a whole step");
            default -> Phrase.one(second.size());
        };
    }
}
