package monochord.view;

import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.keyboard.Drawing;

/** An answer and, below it, one quiet sentence about what was typed; in JSON it is {@code aside}. */
public record RemarkedAnswer(Answer answer, Phrase remark) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        text.line(remark, Style.QUIET);
        return answer.text(look).plus(text.build().wrapped(look.width()));
    }

    @Override
    public List<Drawing> drawings() {
        return answer.drawings();
    }

    @Override
    public void json(Json json) {
        answer.json(json);
        json.put("aside", remark.toString());
    }

    @Override
    public int status() {
        return answer.status();
    }

    @Override
    public Optional<Answer> noted() {
        return answer.noted().map(noted -> new RemarkedAnswer(noted, remark));
    }
}
