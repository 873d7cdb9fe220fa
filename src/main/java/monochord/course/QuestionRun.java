package monochord.course;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.LongSupplier;
import monochord.practice.Question;
import monochord.practice.drill.Level;
import monochord.practice.drill.Turn;
import monochord.practice.skill.Skills;

/**
 * A run of questions being asked, and how it went so far. In a review what was missed comes back once, at the end, while
 * there is time.
 */
public final class QuestionRun implements Activity {
    private final Deque<Turn> ahead;
    private final Deque<Question> again = new ArrayDeque<>();
    private final List<Question> missed = new ArrayList<>();
    private final boolean isReview;
    private final long until;
    private final Level level;
    private Question open;
    private Question returning;
    private boolean isSettled = true;
    private int put;
    private int asked;
    private int atOnce;
    private int second;

    /**
     * How a run went.
     *
     * @param asked how many questions were answered
     * @param atOnce how many of them were right at the first try without help
     * @param second how many more were right when they came back
     * @param missed those that have not been right in either way
     */
    public record Result(int asked, int atOnce, int second, List<Question> missed) {
        public Result {
            missed = List.copyOf(missed);
        }
    }

    private QuestionRun(List<Turn> turns, boolean isReview, long until, Level level) {
        this.ahead = new ArrayDeque<>(turns);
        this.isReview = isReview;
        this.until = until;
        this.level = level;
    }

    /** Each turn once, however long it takes. */
    public static QuestionRun of(List<Turn> turns, Level level) {
        return new QuestionRun(turns, false, Long.MAX_VALUE, level);
    }

    /** @param until when nothing more is asked, in milliseconds since 1970 in UTC */
    public static QuestionRun review(List<Turn> turns, long until, Level level) {
        return new QuestionRun(turns, true, until, level);
    }

    public boolean isReview() {
        return isReview;
    }

    @Override
    public int nearness() {
        return 2;
    }

    /** Of the question that was put last; what has to come back counts as soon as that is known. */
    public Place place() {
        return new Place(Place.Unit.QUESTION, put, put + ahead.size() + again.size());
    }

    /** Whether nothing more is asked; a question that waits to be answered is asked still. */
    public boolean isOver(long now) {
        return isSettled && (ahead.isEmpty() && again.isEmpty() || open != null && now >= until);
    }

    /** The question that waits, else the next one; {@link #note} and {@link #pass} are about it. */
    public Question next(LongSupplier seeds) {
        if (isSettled) {
            returning = ahead.isEmpty() ? again.remove() : null;
            open = returning == null ? ahead.remove().question(seeds, open, level) : back(seeds);
            isSettled = false;
            put++;
        }
        return open;
    }

    /** What was missed longest ago; if it has just been asked, another question like it. */
    private Question back(LongSupplier seeds) {
        return returning.toString().equals(open.toString())
                ? new Turn(Skills.find(returning.skillId()).orElseThrow(), returning.key()).question(seeds, open, level)
                : returning;
    }

    /** Leaves the last question without counting it. */
    public void pass() {
        isSettled = true;
    }

    /** Counts what came of the last question. */
    public void note(boolean rightAtOnce) {
        isSettled = true;
        if (returning != null) {
            noteBack(rightAtOnce);
            return;
        }
        asked++;
        if (rightAtOnce) {
            atOnce++;
            return;
        }
        missed.add(open);
        if (isReview) {
            again.add(open);
        }
    }

    private void noteBack(boolean right) {
        if (right) {
            second++;
            missed.remove(returning);
        }
    }

    public Result result() {
        return new Result(asked, atOnce, second, missed);
    }
}
