package monochord.theory.note;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * How names are written: accidentals and quality signs in ASCII, as they are typed, or with the signs of printed music;
 * and by what names notes go.
 *
 * <p>Values print ASCII and English from {@code toString()}, which is also what their {@code parse} reads first; a sentence
 * for a person carries English names with the signs of printed music, and is turned into what a terminal can show and the
 * learner is used to when it is rendered. Ask {@link #isAscii} rather than compare.
 *
 * @param isAscii whether accidentals and drawings keep to ASCII
 */
public record Signs(boolean isAscii, NoteNaming naming) {
    /** {@code Ab F## Bbb viio7}. */
    public static final Signs ASCII = new Signs(true, NoteNaming.ENGLISH);
    /** {@code A♭ F𝄪 B𝄫 vii°7}. */
    public static final Signs MUSIC = new Signs(false, NoteNaming.ENGLISH);

    /** All there are: in ASCII and as printed, in each naming. */
    public static List<Signs> values() {
        return Arrays.stream(NoteNaming.values())
                .flatMap(naming -> Stream.of(new Signs(true, naming), new Signs(false, naming)))
                .toList();
    }

    /** The same signs with other note names. */
    public Signs with(NoteNaming other) {
        return new Signs(isAscii, other);
    }

    /** The same note names in ASCII. */
    public Signs inAscii() {
        return new Signs(true, naming);
    }

    /**
     * The accidental for an alteration in half steps: nothing for 0, flats below, sharps above. Three and more are a
     * single sign before double ones.
     */
    public String accidental(int alteration) {
        int size = Math.abs(alteration);
        String one = alteration < 0 ? (isAscii ? "b" : "♭") : isAscii ? "#" : "♯";
        return size == 0
                ? ""
                : size == 1
                        ? one
                        : (size % 2 == 1 ? one : "") + doubled(alteration).repeat(size / 2);
    }

    private String doubled(int alteration) {
        return alteration < 0 ? (isAscii ? "bb" : "𝄫") : isAscii ? "##" : "𝄪";
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
    public String dress(String ascii) {
        if (isAscii) {
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
