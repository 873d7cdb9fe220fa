package monochord.shell.sitting;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import monochord.course.Position;
import monochord.shell.line.LineMode;
import monochord.shell.line.PlacedAnswer;
import monochord.text.Phrase;
import monochord.view.Answer;

/**
 * Says where the learner is and what Enter does. The place is said below an answer whenever it has changed, what Enter does
 * below the first answer that leads into a mode and below each page; everywhere else it stands at the prompt. A script is
 * told no more than what it has to know.
 */
public final class LinePlace {
    private final Sitting sitting;
    private LineMode mode = LineMode.REST;
    private Optional<Position> place = Optional.empty();
    /** Modes that the learner has been told about in this sitting. */
    private final Set<LineMode> met = EnumSet.of(LineMode.REST);

    private boolean isSaid;

    LinePlace(Sitting sitting) {
        this.sitting = sitting;
    }

    /** The answer that is under way says itself what Enter does now. */
    void isSaidThere() {
        isSaid = true;
        met.add(sitting.mode());
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

    /** A long answer is read in the midst of something, which no notebook knows of. */
    private void remember() {
        if (sitting.mode() != LineMode.LONG_ANSWER) {
            mode = sitting.mode();
            place = sitting.place();
        }
    }

    /** Goes on where another sitting stands, which has told its learner what is told here. */
    void goOnFrom(LinePlace other) {
        mode = other.mode;
        place = other.place;
        met.addAll(other.met);
    }

    /** The answer, with the place and the row of the mode behind it where they are news. */
    public Answer behind(Answer answer) {
        Phrase row = isSaid || sitting.hasEnded() ? Phrase.NOTHING : news();
        remember();
        if (row.isEmpty()) {
            return answer;
        }
        boolean isBelowQuestion = sitting.question().isOpen() || mode == LineMode.ANSWERED;
        return new PlacedAnswer(answer, row, !isBelowQuestion);
    }

    private Phrase news() {
        LineMode now = sitting.mode();
        boolean isMoved = !sitting.place().equals(place);
        boolean isNew = hasWindow() ? met.add(now) : now == LineMode.ANSWERED && now != mode;
        boolean saysRow = isNew || now.isAlwaysSaid() && (isMoved || now != mode);
        isSaid = saysRow;
        boolean saysPlace = saysRow || isMoved;
        Phrase said = hasWindow() && saysPlace
                ? sitting.place().map(LinePlace::words).orElse(Phrase.NOTHING)
                : Phrase.NOTHING;
        return saysRow ? said.then(row(now)) : said;
    }

    private boolean hasWindow() {
        return sitting.screenLines() != Integer.MAX_VALUE;
    }

    private Phrase row(LineMode now) {
        return now == LineMode.REST
                ? sitting.teaching().opening().row(sitting)
                : sitting.teaching().row(now);
    }

    private static Phrase words(Position place) {
        return switch (place.unit()) {
            case PAGE -> Phrase.sentence("Page {0} of {1}.", place.at(), place.of());
            case QUESTION -> Phrase.sentence("Question {0} of {1}.", place.at(), place.of());
            case STEP -> Phrase.sentence("Step {0} of {1}.", place.at(), place.of());
            case SCREEN -> Phrase.sentence("Screen {0} of {1}.", place.at(), place.of());
        };
    }

    /** What stands at the prompt: nothing where the last answer has just said it. */
    public Phrase underPrompt() {
        if (isSaid) {
            return Phrase.NOTHING;
        }
        LineMode now = sitting.mode();
        return now == LineMode.REST ? sitting.teaching().opening().row(sitting) : now.fullRow();
    }
}
