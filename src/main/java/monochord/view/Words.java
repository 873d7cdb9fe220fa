package monochord.view;

import java.util.List;

/** Small turns of phrase that several answers share. */
public final class Words {
    private static final List<String> NUMBERS =
            List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private Words() {}

    /** {@code one}, {@code two} … as far as ten, then digits. */
    public static String number(int count) {
        return count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
    }

    /** {@code F♯}, {@code F♯ and C♯}, {@code F♯, C♯ and G♯}. */
    public static String listed(List<String> words) {
        int last = words.size() - 1;
        return last <= 0
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
