package monochord.theory;

/**
 * The two ways to write accidentals and quality signs: in ASCII, as they are typed, or with the signs of printed music.
 *
 * <p>Values print ASCII from {@code toString()}, which is also what their {@code parse} reads first; a sentence for a
 * person carries the signs of printed music and is turned into ASCII where a terminal cannot show them.
 */
public enum Signs {
    /** {@code Ab F## Bbb viio7}. */
    ASCII("b", "#", "bb", "##"),
    /** {@code A♭ F𝄪 B𝄫 vii°7}. */
    MUSIC("♭", "♯", "𝄫", "𝄪");

    private final String flat;
    private final String sharp;
    private final String doubleFlat;
    private final String doubleSharp;

    Signs(String flat, String sharp, String doubleFlat, String doubleSharp) {
        this.flat = flat;
        this.sharp = sharp;
        this.doubleFlat = doubleFlat;
        this.doubleSharp = doubleSharp;
    }

    /**
     * The accidental for an alteration in half steps: nothing for 0, flats below, sharps above. Three and more are a
     * single sign before double ones.
     */
    public String accidental(int alteration) {
        int size = Math.abs(alteration);
        String one = alteration < 0 ? flat : sharp;
        String two = alteration < 0 ? doubleFlat : doubleSharp;
        return size == 0 ? "" : size == 1 ? one : (size % 2 == 1 ? one : "") + two.repeat(size / 2);
    }

    /** A text with the signs of printed music as ASCII; every other character stays. */
    public static String toAscii(String text) {
        StringBuilder ascii = new StringBuilder(text.length());
        text.codePoints().forEach(c -> appendAscii(ascii, c));
        return ascii.toString();
    }

    private static void appendAscii(StringBuilder ascii, int codePoint) {
        switch (codePoint) {
            case '♭' -> ascii.append('b');
            case '♯' -> ascii.append('#');
            case '♮' -> ascii.append("nat");
            case 0x1D12A -> ascii.append("##");
            case 0x1D12B -> ascii.append("bb");
            case '°' -> ascii.append('o');
            case 'ø' -> ascii.append("/o");
            default -> ascii.appendCodePoint(codePoint);
        }
    }

    /** An ASCII chord suffix or numeral with each accidental that stands before a digit or a letter I to V as a sign. */
    String dress(String ascii) {
        if (this == ASCII) {
            return ascii;
        }
        StringBuilder dressed = new StringBuilder(ascii);
        for (int i = 0; i + 1 < ascii.length(); i++) {
            boolean alters = "0123456789IViv".indexOf(ascii.charAt(i + 1)) >= 0;
            if (alters && ascii.charAt(i) == 'b') {
                dressed.setCharAt(i, '♭');
            } else if (alters && ascii.charAt(i) == '#') {
                dressed.setCharAt(i, '♯');
            }
        }
        return dressed.toString();
    }
}
