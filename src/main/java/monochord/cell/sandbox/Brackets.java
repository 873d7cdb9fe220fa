package monochord.cell.sandbox;

import java.util.ArrayDeque;
import java.util.Deque;

/** The brackets of a text that are open, what stands in quotation marks left out. */
final class Brackets {
    private static final String OPENING = "({[";
    private static final String CLOSING = ")}]";

    private Brackets() {}

    /** The brackets that would close what is open at the end of a text, innermost first. */
    static String missing(String text) {
        Deque<Character> open = new ArrayDeque<>();
        char quote = 0;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (quote != 0) {
                i += sign == '\\' ? 1 : 0;
                quote = sign == quote || sign == '\n' ? 0 : quote;
            } else if (sign == '"' || sign == '\'') {
                quote = sign;
            } else {
                count(sign, open);
            }
        }
        StringBuilder missing = new StringBuilder();
        open.forEach(missing::append);
        return missing.toString();
    }

    private static void count(char sign, Deque<Character> open) {
        int kind = OPENING.indexOf(sign);
        if (kind >= 0) {
            open.push(CLOSING.charAt(kind));
        } else if (!open.isEmpty() && open.peek() == sign) {
            open.pop();
        }
    }

    /** Whether the bracket that stands at a place of a text closes nothing. */
    static boolean isSurplus(String text, int place) {
        return place < text.length()
                && CLOSING.indexOf(text.charAt(place)) >= 0
                && missing(text.substring(0, place)).indexOf(text.charAt(place)) < 0;
    }
}
