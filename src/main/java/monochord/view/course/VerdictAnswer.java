package monochord.view.course;

import java.util.List;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/**
 * A verdict on an answer.
 *
 * @param next what the learner can do now, a line each; perhaps nothing
 */
public record VerdictAnswer(Question question, Verdict verdict, List<Phrase> next) implements Answer {
    public VerdictAnswer {
        next = List.copyOf(next);
    }

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader()).line(verdict.message(), style());
        next.forEach(line -> text.line(line, Style.QUIET));
        return text.build().wrapped(look.width());
    }

    private Style style() {
        return switch (verdict.grade()) {
            case RIGHT, REMARK -> Style.RIGHT;
            case NEARLY -> Style.NEARLY;
            case WRONG -> Style.WRONG;
            case UNREADABLE -> Style.PLAIN;
        };
    }

    @Override
    public void json(Json json) {
        AskAnswer.fields(question, question.subject(), json.put("kind", "verdict"));
        json.put("verdict", verdict.grade().toString())
                .put("misconception", verdict.misconception())
                .put("message", verdict.message().toString())
                .put("expected", verdict.expected());
    }

    @Override
    public int status() {
        if (verdict.grade() == Grade.UNREADABLE) {
            return UNREADABLE;
        }
        return verdict.grade().isRight() ? DONE : NO;
    }
}
