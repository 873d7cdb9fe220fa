package monochord.notebook;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How large the screen was on which a lesson was laid out in pages.
 *
 * <p>Text form: {@code 80x24}.
 *
 * @param rows 0 where there was no end to them, as through a pipe
 */
public record Screen(int columns, int rows) {
    /** The one that counts where a notebook names none. */
    public static final Screen USUAL = new Screen(80, 24);

    private static final Pattern FORM = Pattern.compile("([1-9][0-9]{0,3})x([0-9]{1,4})");

    static Optional<Screen> parse(String text) {
        Matcher said = FORM.matcher(text);
        return said.matches()
                ? Optional.of(new Screen(Integer.parseInt(said.group(1)), Integer.parseInt(said.group(2))))
                : Optional.empty();
    }

    /** Lines seen at once. */
    public int lines() {
        return rows == 0 ? Integer.MAX_VALUE : rows;
    }

    @Override
    public String toString() {
        return columns + "x" + rows;
    }
}
