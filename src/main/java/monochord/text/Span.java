package monochord.text;

/**
 * A piece of a line in one style. Tabs become spaces and other control characters are left out, so that no text can
 * steer a terminal.
 */
public record Span(String text, Style style) {
    public Span {
        text = isClean(text) ? text : clean(text);
    }

    public Span(String text) {
        this(text, Style.PLAIN);
    }

    private static boolean isClean(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (steers(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    private static String clean(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().map(c -> c == '\t' ? ' ' : c).filter(c -> !steers(c)).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** Control characters, line and paragraph separators, and the signs that turn the direction of writing. */
    private static boolean steers(int c) {
        if (c >= ' ' && c <= '~') {
            return false;
        }
        return Character.isISOControl(c)
                || c == 0x2028
                || c == 0x2029
                || c >= 0x202A && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069;
    }

    /** Columns of a terminal. */
    public int columns() {
        return Columns.of(text);
    }

    Span withText(String other) {
        return new Span(other, style);
    }
}
