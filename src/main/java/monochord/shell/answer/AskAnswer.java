package monochord.shell.answer;

import monochord.page.Style;
import monochord.page.StyledText;
import monochord.practice.Question;

/** A question put to the learner. */
public record AskAnswer(Question question) implements Answer {
    @Override
    public StyledText text(Look look) {
        return StyledText.of(question.prompt(), Style.STRONG).in(look.signs()).wrapped(look.width());
    }

    @Override
    public void json(Json json) {
        fields(question, json);
    }

    static void fields(Question question, Json json) {
        json.put("skill", question.skillId())
                .put("subject", question.subject())
                .put("key", question.key().toString())
                .put("seed", question.seed())
                .put("prompt", question.prompt())
                .put("form", question.form().toString());
    }
}
