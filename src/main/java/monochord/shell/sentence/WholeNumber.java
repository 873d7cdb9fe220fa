package monochord.shell.sentence;

import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;

/** Numbers that several verbs take behind a small word or an option. */
public final class WholeNumber {
    private WholeNumber() {}

    /**
     * How many of something.
     *
     * @param most at most 9999
     * @param example a whole sentence with a number that can be read
     * @throws Unreadable if it is none from 1 to {@code most}
     */
    public static int count(String text, int most, String example) {
        int number = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
        if (number < 1 || number > most) {
            throw Unreadable.because(
                    text, 0, "a number", Clause.of("expected a whole number from 1 to {0}", most), example);
        }
        return number;
    }

    /**
     * What questions are drawn with.
     *
     * @throws Unreadable if it is no number of at most 64 bits
     */
    public static long seed(String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException unreadable) {
            throw Unreadable.because(text, 0, "a seed", "expected a whole number", "--seed 7");
        }
    }
}
