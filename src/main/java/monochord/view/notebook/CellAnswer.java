package monochord.view.notebook;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * What came of a cell of Java.
 *
 * @param parts values, prints and notices in the order in which they came
 * @param unprinted characters that were printed beyond the bound
 * @param trouble what went wrong, or null
 */
public record CellAnswer(List<AnswerItem> parts, int unprinted, CellTrouble trouble) implements Answer {
    /** One thing that came out. */
    public sealed interface AnswerItem {}

    /** What the cell printed. */
    public record PrintedText(String text) implements AnswerItem {}

    /** What is to be known. */
    public record NoticeText(Phrase said) implements AnswerItem {}

    /**
     * A value.
     *
     * @param name the variable that has it, or nothing
     * @param type its class, or nothing
     * @param text what it prints, or how it would be typed
     * @param music how it is shown where it is music, or null
     */
    public record ValueLine(String name, String type, String text, Answer music) implements AnswerItem {}

    public CellAnswer {
        parts = List.copyOf(parts);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        boolean first = true;
        for (AnswerItem part : parts) {
            StyledText said = text(part, look);
            if (!first && part instanceof ValueLine value && value.music != null) {
                text.gap();
            }
            text.lines(said);
            first = false;
        }
        if (unprinted > 0) {
            text.lines(StyledText.of(
                            Phrase.of("… and {0} more characters that are not shown.", unprinted)
                                    .styled(Style.QUIET),
                            look.reader())
                    .wrapped(look.width()));
        }
        if (trouble != null) {
            text.lines(trouble.text(look));
        }
        return text.build();
    }

    private static StyledText text(AnswerItem part, Look look) {
        if (part instanceof ValueLine value) {
            return value.music != null
                    ? value.music.text(look)
                    : said(value.name.isEmpty() ? value.text : value.name + " = " + value.text, look);
        }
        return part instanceof PrintedText printed
                ? said(printed.text.stripTrailing(), look)
                : StyledText.of(((NoticeText) part).said.styled(Style.QUIET), look.reader())
                        .wrapped(look.width());
    }

    /** Java knows notes by their English names, whatever the learner calls them. */
    private static StyledText said(String text, Look look) {
        return StyledText.of(text.replace("\t", "    "))
                .in(look.signs().with(NoteNaming.ENGLISH))
                .wrapped(look.width());
    }

    private String printed() {
        StringBuilder printed = new StringBuilder();
        for (AnswerItem part : parts) {
            printed.append(part instanceof PrintedText some ? some.text : "");
        }
        return printed.toString();
    }

    private List<ValueLine> values() {
        List<ValueLine> values = new ArrayList<>();
        parts.forEach(part -> {
            if (part instanceof ValueLine value) {
                values.add(value);
            }
        });
        return values;
    }

    /** The last value is the value of the cell. */
    @Override
    public void json(Json json) {
        List<ValueLine> values = values();
        ValueLine last = values.isEmpty() ? null : values.get(values.size() - 1);
        json.put("kind", "cell")
                .put("value", last == null ? null : last.text)
                .put("type", last == null ? null : last.type)
                .put("output", printed());
        if (trouble != null) {
            trouble.json(json);
        }
    }

    @Override
    public int status() {
        return trouble == null ? DONE : trouble.status();
    }
}
