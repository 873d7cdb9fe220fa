package monochord.shell.line;

import java.util.List;
import monochord.course.Position;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** An answer longer than the window, of which one screen after another is shown. */
public final class LongAnswer {
    /** The line that says how to go on, and the prompt, each after an empty line. */
    private static final int PROMPT = 4;

    private final List<StyledLine> lines;
    private final int size;
    private int at;

    private LongAnswer(List<StyledLine> lines, int size) {
        this.lines = List.copyOf(lines);
        this.size = size;
    }

    /** @param rows of the window, the prompt's among them */
    public static LongAnswer of(StyledText text, int rows) {
        return new LongAnswer(text.lines(), Math.max(1, rows - PROMPT));
    }

    /** Whether a text and the prompt below it fill more than the window. */
    public static boolean isTooLong(StyledText text, int rows) {
        return text.lines().size() + 2 > rows;
    }

    /** The screen that is to be seen. */
    public Answer screen() {
        int from = at * size;
        return new RenderedLines(new StyledText(lines.subList(from, Math.min(lines.size(), from + size))));
    }

    /** Lines that are in the reader's words and note names already. */
    private record RenderedLines(StyledText lines) implements Answer {
        @Override
        public StyledText text(Look look) {
            return lines;
        }

        @Override
        public void json(Json json) {
            json.put("kind", "message").put("message", lines.plain());
        }
    }

    public boolean isLast() {
        return (at + 1) * size >= lines.size();
    }

    public void forward() {
        at++;
    }

    public void back() {
        at = Math.max(0, at - 1);
    }

    public Position place() {
        return new Position(Position.Unit.SCREEN, at + 1, (lines.size() + size - 1) / size);
    }
}
