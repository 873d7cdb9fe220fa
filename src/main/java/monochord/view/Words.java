package monochord.view;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import monochord.theory.NoteName;
import monochord.theory.Scale;
import monochord.theory.Signs;

/** Small turns of phrase that several answers share. */
public final class Words {
    private static final List<String> NUMBERS =
            List.of("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

    private Words() {}

    /** {@code one}, {@code two} … as far as ten, then digits. */
    public static String number(int count) {
        return count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
    }

    public static String notes(List<NoteName> notes, Look look) {
        return joined(notes, " ", note -> note.write(look.signs()));
    }

    public static <T> String joined(List<T> values, String between, Function<T, String> name) {
        return values.stream().map(name).collect(Collectors.joining(between));
    }

    /** {@code F♯}, {@code F♯ and C♯}, {@code F♯, C♯ and G♯}. */
    public static String listed(List<String> words) {
        int last = words.size() - 1;
        return last <= 0
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** {@code D minor (also D phrygian)}: the nearest source first. */
    public static String sources(List<Scale> sources, Signs signs) {
        String nearest = sources.get(0).write(signs);
        List<String> others = sources.subList(1, sources.size()).stream()
                .map(scale -> scale.kind().toString())
                .toList();
        return others.isEmpty() ? nearest : nearest + " (also " + String.join(", ", others) + ")";
    }
}
