package monochord.view;

import java.util.Optional;
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
        json.put("aside", remark.toString());
    }

    @Override
    public Optional<Answer> noted() {
        return answer.noted().map(noted -> new RemarkedAnswer(noted, remark));
    }
}
