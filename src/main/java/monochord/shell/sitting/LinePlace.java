package monochord.shell.sitting;

import java.util.Optional;
import monochord.course.Place;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Aside;
import monochord.view.Statement;

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
        Phrase row = isSaid || sitting.hasEnded() ? Phrase.NOTHING : news();
        remember();
        if (row.isEmpty()) {
            return answer;
        }
        Answer with = Answers.of(answer, Statement.of(row.styled(Style.QUIET)));
        return answer.noted().isEmpty() ? new Aside(with) : with;
    }

    private Phrase news() {
        LineMode now = sitting.mode();
        boolean isMoved = !sitting.place().equals(place);
        boolean saysRow = now.isAlwaysSaid() ? isMoved || now != mode : sitting.isSeated() && now != mode;
        isSaid = saysRow;
        boolean saysPlace = saysRow || isMoved;
        Phrase said = sitting.isSeated() && saysPlace
                ? sitting.place().map(LinePlace::words).orElse(Phrase.NOTHING)
                : Phrase.NOTHING;
        return saysRow ? said.then(row(now)) : said;
    }

    private Phrase row(LineMode now) {
        return now == LineMode.REST ? sitting.teaching().opening().row(sitting) : sitting.teaching().row(now);
    }

    private static Phrase words(Place place) {
        return switch (place.unit()) {
            case PAGE -> Phrase.sentence("Page {0} of {1}.", place.at(), place.of());
            case QUESTION -> Phrase.sentence("Question {0} of {1}.", place.at(), place.of());
            case STEP -> Phrase.sentence("Step {0} of {1}.", place.at(), place.of());
            case SCREEN -> Phrase.sentence("Screen {0} of {1}.", place.at(), place.of());
        };
    }

    /** What stands under the prompt: nothing where the last answer has just said it. */
    public Phrase underPrompt() {
        if (isSaid) {
            return Phrase.NOTHING;
        }
        LineMode now = sitting.mode();
        return now == LineMode.REST ? sitting.teaching().opening().row(sitting) : now.fullRow();
    }
}
