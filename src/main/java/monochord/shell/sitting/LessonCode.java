package monochord.shell.sitting;

import java.util.List;
import monochord.lesson.Part;
import monochord.lesson.SafeText;
import monochord.page.Style;
import monochord.page.StyledText;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Saying;

/** The Java of a lesson: shown, and run once the learner says so, if it may be run at all. */
final class LessonCode {
    private final boolean mayRun;
    private String waiting = "";

    /** @param mayRun whether the lesson is one of ours, or was said yes to */
    LessonCode(boolean mayRun) {
        this.mayRun = mayRun;
    }

    /** Whether the next Enter runs something. */
    boolean isWaiting() {
        return !waiting.isEmpty();
    }

    /** @return whether the walk stops here */
    boolean show(Part.Code code, List<Answer> page) {
        String text = SafeText.clean(code.text()).stripTrailing();
        page.add(Saying.of(StyledText.of("  " + text.replace("\n", "\n  "), Style.TYPED)));
        if (!mayRun) {
            page.add(Saying.of("This lesson is not one of ours, so its Java is shown and not run."));
            return false;
        }
        waiting = text;
        page.add(Saying.of("Enter runs it; skip passes it by."));
        return true;
    }

    /** Runs what was shown last, if it still waits. */
    void run(List<Answer> page, Sitting sitting) {
        if (isWaiting()) {
            String text = waiting;
            waiting = "";
            page.add(sitting.cells().run(text));
        }
    }

    void passBy() {
        waiting = "";
    }
}
