package monochord.text;

import java.util.ArrayList;
import java.util.List;

/** Cuts a line of spans without losing their styles. */
final class Pieces {
    private static final String STAYS_WITH_THE_WORD_BEFORE = "|.%";

    private Pieces() {}

    /** Words and the spaces between them in turn. */
    static List<StyledLine> of(StyledLine line) {
        List<StyledLine> pieces = new ArrayList<>();
        String text = line.plain();
        int start = 0;
        for (int i = 1; i <= text.length(); i++) {
            if (i == text.length() || isCut(text, i)) {
                pieces.add(chars(line, start, i));
                start = i;
            }
        }
        return pieces;
    }

    private static boolean isCut(String text, int i) {
        boolean before = text.charAt(i - 1) == ' ';
        boolean after = text.charAt(i) == ' ';
        return before != after && !isGlue(text, after ? i + 1 : i);
    }

    /** Whether a lone bar line, dot or repeat sign stands at this place, behind one space. */
    private static boolean isGlue(String text, int i) {
        return i > 1
                && i < text.length()
                && text.charAt(i - 1) == ' '
                && text.charAt(i - 2) != ' '
                && STAYS_WITH_THE_WORD_BEFORE.indexOf(text.charAt(i)) >= 0
                && (i + 1 == text.length() || text.charAt(i + 1) == ' ');
    }

    /** The line from the one char to the other, as in {@link String#substring}. */
    static StyledLine chars(StyledLine line, int start, int end) {
        List<Span> kept = new ArrayList<>();
        int place = 0;
        for (Span span : line.spans()) {
            int from = Math.max(start - place, 0);
            int to = Math.min(end - place, span.text().length());
            if (from < to) {
                kept.add(span.withText(span.text().substring(from, to)));
            }
            place += span.text().length();
        }
        return new StyledLine(kept);
    }
}
