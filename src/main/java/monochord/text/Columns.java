package monochord.text;

/**
 * How many columns of a terminal a text takes.
 *
 * <p>Accidentals take one each, the double ones too although Java counts them as two chars. Combining marks take none,
 * the ideographs and emoji of East Asian width W two.
 *
 * <p>Source: Unicode Standard Annex 11, East Asian Width; the wide blocks are taken whole, from memory.
 */
public final class Columns {
    private Columns() {}

    public static int of(String text) {
        int columns = 0;
        for (int i = 0; i < text.length(); i++) {
            int c = text.charAt(i);
            if (Character.isSurrogate((char) c)) {
                c = text.codePointAt(i);
                i += Character.charCount(c) - 1;
            }
            columns += of(c);
        }
        return columns;
    }

    static int of(int codePoint) {
        if (within(codePoint, ' ', '~')) {
            return 1;
        }
        return switch (Character.getType(codePoint)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT, Character.CONTROL -> 0;
            default -> isWide(codePoint) ? 2 : 1;
        };
    }

    private static boolean isWide(int c) {
        return within(c, 0x1100, 0x115F)
                || within(c, 0x2E80, 0xA4CF)
                || within(c, 0xAC00, 0xD7A3)
                || within(c, 0xF900, 0xFAFF)
                || within(c, 0xFE30, 0xFE6F)
                || within(c, 0xFF00, 0xFF60)
                || within(c, 0xFFE0, 0xFFE6)
                || within(c, 0x1F300, 0x1F64F)
                || within(c, 0x1F900, 0x1F9FF)
                || within(c, 0x20000, 0x3FFFD);
    }

    private static boolean within(int c, int low, int high) {
        return c >= low && c <= high;
    }

    /** How many chars from {@code start} fit into {@code room} columns; at least one code point, never half of one. */
    static int charsThatFit(String text, int start, int room) {
        int end = start;
        int used = 0;
        while (end < text.length()) {
            int c = text.codePointAt(end);
            used += of(c);
            if (used > room && end > start) {
                break;
            }
            end += Character.charCount(c);
        }
        return end - start;
    }
}
