package monochord.text;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks lines that are too wide.
 *
 * <p>A line that fits stays as it is. One that does not is broken at spaces, never inside a chord symbol or a numeral; a
 * bar line or the dot that holds a chord stays with the chord before it, and what a no-break space joins stays together.
 * The lines after the first stand under the first word, behind the mark of a list item. A word wider than the line is
 * cut. No line ends in spaces.
 */
public final class Wrap {
    /** Columns below which nothing is set narrower still. */
    public static final int NARROWEST = 20;

    public static final int WIDEST = 200;

    private Wrap() {}

    /** @param width columns; held between {@value #NARROWEST} and {@value #WIDEST} */
    public static StyledText text(StyledText text, int width) {
        List<StyledLine> wrapped = new ArrayList<>();
        text.lines().forEach(line -> wrapped.addAll(line(line, width)));
        return new StyledText(wrapped);
    }

    /** The line as one or more lines; the hanging indent is read from its beginning: spaces, then perhaps a list mark. */
    public static List<StyledLine> line(StyledLine line, int width) {
        return line(line, width, HangingIndent.of(line.plain()));
    }

    /** @param hang columns by which the lines after the first are set in */
    public static List<StyledLine> line(StyledLine line, int width, int hang) {
        int room = Math.max(NARROWEST, Math.min(WIDEST, width));
        StyledLine trimmed = line.stripTrailing();
        if (trimmed.columns() <= room) {
            return List.of(trimmed);
        }
        return new WrappedLine(room, Math.min(hang, room / 2)).of(trimmed);
    }
}
