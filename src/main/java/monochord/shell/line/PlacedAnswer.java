package monochord.shell.line;

import java.util.Optional;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Look;
import monochord.view.Statement;
import monochord.view.WrappedAnswer;

/**
 * An answer, and right below it where the learner is now and what Enter does.
 *
 * @param isApart whether an empty line stands between, as below prose
 */
public record PlacedAnswer(Answer answer, Phrase row, boolean isApart) implements WrappedAnswer {
    @Override
    public StyledText text(Look look) {
        StyledText said = answer.text(look);
        StyledText.Builder text = StyledText.builder().lines(said);
        if (isApart && !said.isEmpty()) {
            text.gap();
        }
        return text.lines(Statement.of(row.styled(Style.QUIET)).text(look)).build();
    }

    /** What is no part of a notebook takes its place with it. */
    @Override
    public Optional<Answer> noted() {
        return answer.noted().map(kept -> new PlacedAnswer(kept, row, isApart));
    }
}
