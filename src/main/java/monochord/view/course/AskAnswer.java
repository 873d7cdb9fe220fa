package monochord.view.course;

import java.util.Optional;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * A question put to the learner.
 *
 * @param subject as scripts may read it; null where it would be the answer
 * @param remark what the sound room has to say; empty for nothing
 */
public record AskAnswer(Question question, String subject, Phrase remark) implements Answer {
    /** The subject of a question for the ear is its answer, so it is left out. */
    public AskAnswer(Question question, Phrase remark) {
        this(question, question.isByEar() ? null : question.subject(), remark);
    }

    public AskAnswer(Question question) {
        this(question, Phrase.NOTHING);
    }

    /** The same for somebody who named the subject. */
    public AskAnswer named() {
        return new AskAnswer(question, question.subject(), remark);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader()).line(question.prompt(), Style.STRONG);
        if (!remark.isEmpty()) {
            text.line(remark, Style.QUIET);
        }
        return text.build().wrapped(look.width());
    }

    /** Whether there is a sound card is no matter of the question. */
    @Override
    public Optional<Answer> noted() {
        return Optional.of(new AskAnswer(question, subject, Phrase.NOTHING));
    }

    @Override
    public void json(Json json) {
        fields(question, subject, json.put("kind", "question"));
    }

    /** The fields of a question, as the command line promises them. */
    public static void fields(Question question, String subject, Json json) {
        json.put("skill", question.skillId())
                .put("subject", subject)
                .put("key", question.key().toString())
                .put("seed", question.seed())
                .put("prompt", question.prompt().toString())
                .put("form", question.form().toString());
    }
}
