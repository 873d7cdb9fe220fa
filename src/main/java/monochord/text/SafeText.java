package monochord.text;

/** Keeps from the terminal what could steer it: control characters, escape sequences, and marks that turn text round. */
public final class SafeText {
    private static final int REPLACEMENT = 0xFFFD;

    private SafeText() {}

    /** Whether a character may be shown; tab and line feed may. */
    public static boolean isSafe(int codePoint) {
        if (codePoint >= ' ' && codePoint <= '~') {
            return true;
        }
        int type = Character.getType(codePoint);
        return codePoint == '\t'
                || codePoint == '\n'
                || !(type == Character.CONTROL
                        || type == Character.FORMAT
                        || type == Character.SURROGATE
                        || type == Character.LINE_SEPARATOR
                        || type == Character.PARAGRAPH_SEPARATOR);
    }

    private static boolean isSafe(String text) {
        for (int i = 0; i < text.length(); ) {
            int c = text.codePointAt(i);
            if (!isSafe(c)) {
                return false;
            }
            i += Character.charCount(c);
        }
        return true;
    }

    /** The text with every unsafe character as U+FFFD, so that places in it stay; the text itself if there is none. */
    public static String clean(String text) {
        if (isSafe(text)) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().map(c -> isSafe(c) ? c : REPLACEMENT).forEach(clean::appendCodePoint);
        return clean.toString();
    }

    /** The text cleaned, with tabs and line feeds as spaces. */
    public static String oneLine(String text) {
        return clean(text).replace('\n', ' ').replace('\t', ' ');
    }
}
