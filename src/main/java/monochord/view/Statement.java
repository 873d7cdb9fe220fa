package monochord.view;

import java.util.List;
import java.util.stream.Collectors;
import monochord.text.Phrase;
import monochord.text.StyledText;

/**
 * Something said in sentences, with nothing to draw.
 *
 * @param lines each begins on a line of its own
 */
public record Statement(List<Phrase> lines, int status) implements Answer {
    public Statement {
        lines = List.copyOf(lines);
    }

    public static Statement of(Phrase... lines) {
        return new Statement(List.of(lines), DONE);
    }

    /** What is said where something outside failed: a file, a device. */
    public static Statement failed(Phrase... lines) {
        return new Statement(List.of(lines), FAILED);
    }

    /** What is said where all went well and the answer is no. */
    public static Statement no(Phrase... lines) {
        return new Statement(List.of(lines), NO);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        lines.forEach(text::line);
        return text.build().wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        String kind = status == DONE ? "message" : "error";
        json.put("kind", kind).put(kind, lines.stream().map(Phrase::toString).collect(Collectors.joining("\n")));
    }
}
