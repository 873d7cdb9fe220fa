package monochord.shell;

import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Look;

/** Turns styles into what a terminal shows: ECMA-48 sequences where styles are wanted, bare text elsewhere. */
final class Ansi {
    private static final String RESET = "\033[0m";

    private Ansi() {}

    /** The lines, each ended by a line feed. */
    static String of(StyledText text, Look look) {
        StringBuilder out = new StringBuilder();
        for (StyledLine line : text.lines()) {
            for (Span span : line.spans()) {
                append(out, span, look.colour());
            }
            out.append('\n');
        }
        return out.toString();
    }

    private static void append(StringBuilder out, Span span, boolean colour) {
        String code = colour ? code(span.style()) : "";
        out.append(code).append(span.text()).append(code.isEmpty() ? "" : RESET);
    }

    private static String code(Style style) {
        return switch (style) {
            case PLAIN -> "";
            case STRONG, PROMPT, ROOT -> "\033[1m";
            case HEADING -> "\033[1;4m";
            case EMPHASIS -> "\033[3m";
            case QUIET -> "\033[2m";
            case TYPED, JAVA -> "\033[36m";
            case THIRD -> "\033[35m";
            case FIFTH -> "\033[34m";
            case SEVENTH -> "\033[33m";
            case OTHER_TONE -> "\033[36m";
            case RIGHT -> "\033[32m";
            case NEARLY -> "\033[33m";
            case WRONG -> "\033[31m";
        };
    }
}
