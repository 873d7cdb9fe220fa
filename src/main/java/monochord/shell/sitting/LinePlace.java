package monochord.shell.sitting;

import java.util.Optional;
import monochord.course.Place;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Aside;
import monochord.view.Saying;

/**
 * Says where the learner is and what Enter does: behind an answer when that has changed, else under the prompt. A script is
 * told no more than what it has to know.
 */
public final class LinePlace {
    private final Sitting sitting;
    private LineMode mode = LineMode.REST;
    private Optional<Place> place = Optional.empty();
    private boolean isSaid;

    LinePlace(Sitting sitting) {
        this.sitting = sitting;
    }

    /** The answer that is under way says itself what Enter does now. */
    void isSaidThere() {
        isSaid = true;
        remember();
    }

    /** What came after it is shown first: the line is answered anew. */
    public Answer instead(Answer answer) {
        isSaid = false;
        return behind(answer);
    }

    /** A line is about to be answered. */
    public void begin() {
        isSaid = false;
    }

    private void remember() {
        mode = sitting.mode();
        place = sitting.place();
    }

    /** The answer, with the place and the row of the mode behind it where they are news. */
    public Answer behind(Answer answer) {
        String row = isSaid || sitting.hasEnded() ? "" : news();
        remember();
        if (row.isEmpty()) {
            return answer;
        }
        Answer with = Answers.of(answer, Saying.of(StyledText.of(row, Style.QUIET)));
        return answer.noted().isEmpty() ? new Aside(with) : with;
    }

    private String news() {
        LineMode now = sitting.mode();
        boolean isMoved = !sitting.place().equals(place);
        boolean saysRow = now.isAlwaysSaid() ? isMoved || now != mode : sitting.isSeated() && now != mode;
        isSaid = saysRow;
        String said = sitting.isSeated() && (isMoved || saysRow) || saysRow && now == LineMode.LONG_ANSWER
                ? sitting.place().map(LinePlace::words).orElse("")
                : "";
        return (said + (saysRow ? row(now) : "")).strip();
    }

    private String row(LineMode now) {
        return now == LineMode.REST ? sitting.teaching().opening().row(sitting) : sitting.teaching().row(now);
    }

    private static String words(Place place) {
        String of = place.at() + " of " + place.of() + ". ";
        return switch (place.unit()) {
            case PAGE -> "Page " + of;
            case QUESTION -> "Question " + of;
            case STEP -> "Step " + of;
            case SCREEN -> "Screen " + of;
        };
    }

    /** What stands under the prompt: nothing where the last answer has just said it. */
    public String underPrompt() {
        if (isSaid) {
            return "";
        }
        LineMode now = sitting.mode();
        return now == LineMode.REST ? sitting.teaching().opening().row(sitting) : now.fullRow();
    }
}
