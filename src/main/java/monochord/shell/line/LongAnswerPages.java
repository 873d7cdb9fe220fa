package monochord.shell.line;

import java.util.Optional;
import monochord.course.Position;
import monochord.view.Answer;
import monochord.view.NotebookRemark;

/** The long answer that is being read screen by screen, if there is one. */
public final class LongAnswerPages {
    private LongAnswer answer;

    public boolean isOpen() {
        return answer != null;
    }

    public Optional<Position> place() {
        return Optional.ofNullable(answer).map(LongAnswer::place);
    }

    /** Shows the rest of it screen by screen, before anything else. */
    public Answer show(LongAnswer longer) {
        answer = longer;
        return screen();
    }

    /** The next screen. */
    public Answer more() {
        answer.forward();
        return screen();
    }

    /** The screen before. */
    public Answer before() {
        answer.back();
        return screen();
    }

    private Answer screen() {
        Answer screen = new NotebookRemark(answer.screen());
        if (answer.isLast()) {
            answer = null;
        }
        return screen;
    }

    /** Shows no more of it. */
    public void leave() {
        answer = null;
    }
}
