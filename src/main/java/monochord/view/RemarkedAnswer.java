package monochord.view;

import java.util.Optional;
import java.util.function.Consumer;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;

/** An answer and, below it, one quiet sentence about what was typed; in JSON it is {@code aside}. */
public record RemarkedAnswer(Answer answer, Phrase remark) implements WrappedAnswer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(remark, Style.QUIET);
        return answer.text(look).plus(text.build().wrapped(look.width()));
    }

    @Override
    public void json(Json json) {
        answer.json(json);
        aside(json);
    }

    @Override
    public void jsonLines(Consumer<Json> lines) {
        answer.jsonLines(json -> lines.accept(aside(json)));
    }

    private Json aside(Json json) {
        return json.put("aside", remark.toString());
    }

    @Override
    public Optional<Answer> noted() {
        return answer.noted().map(noted -> new RemarkedAnswer(noted, remark));
    }
}
