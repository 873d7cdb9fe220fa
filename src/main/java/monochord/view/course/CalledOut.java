package monochord.view.course;

import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * The verdict on an answer that was called out in a class.
 *
 * @param said the answer, and who gave it
 */
public record CalledOut(Phrase said, VerdictAnswer verdict) implements Answer {
    @Override
    public StyledText text(Look look) {
        return StyledText.builder(look.reader())
                .line(said, Style.STRONG)
                .lines(verdict.text(look))
                .build()
                .wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        verdict.json(json);
    }

    @Override
    public int status() {
        return verdict.status();
    }
}
