package monochord.text;

import java.text.Normalizer;
import monochord.theory.note.Signs;

/** Running text for a terminal that shows ASCII alone. */
final class Ascii {
    private Ascii() {}

    /** The nearest writing in ASCII; letters lose their accents, and a sign without a near one becomes a question mark. */
    static String of(String text) {
        if (isAscii(text)) {
            return text;
        }
        StringBuilder ascii = new StringBuilder(text.length());
        Signs.toAscii(text).codePoints().forEach(c -> ascii.append(c < 0x80 ? Character.toString(c) : near(c)));
        return ascii.toString();
    }

    private static boolean isAscii(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) >= 0x80) {
                return false;
            }
        }
        return true;
    }

    private static String near(int c) {
        return switch (c) {
            case '\u00A0', '\u2009', '\u202F' -> " ";
            case '‘', '’', '′' -> "'";
            case '“', '”', '″' -> "\"";
            case '–', '−', '‐', '‑', '─' -> "-";
            case '—' -> "--";
            case '…' -> "...";
            case '→' -> "->";
            case '←' -> "<-";
            case '↑' -> "^";
            case '↓' -> "v";
            case '·', '•' -> "*";
            case '×' -> "x";
            case '│' -> "|";
            case '▸', '›' -> ">";
            case '½' -> "1/2";
            case 'Δ' -> "maj";
            case 'ß' -> "ss";
            default -> bare(c);
        };
    }

    private static String bare(int c) {
        String letters = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFD)
                .codePoints()
                .filter(part -> part < 0x80)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return letters.isEmpty() && Columns.of(c) > 0 ? "?" : letters;
    }
}
