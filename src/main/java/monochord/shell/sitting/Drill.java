package monochord.shell.sitting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.LongSupplier;
import monochord.practice.Question;
import monochord.practice.drill.Level;
import monochord.practice.drill.Turn;
import monochord.practice.skill.Skills;
import monochord.view.course.DrillEnd;

/**
 * A run of questions being asked, and how it went so far. In a review what was missed comes back once, at the end, while
 * there is time.
 */
final class Drill {
    private final Deque<Turn> ahead;
    private final Deque<Question> again = new ArrayDeque<>();
    private final List<Question> missed = new ArrayList<>();
    private final boolean bringsBack;
    private final long until;
    private final Level level;
    private Question open;
    private Question returning;
    private int asked;
    private int atOnce;
    private int second;

    private Drill(List<Turn> turns, boolean bringsBack, long until, Level level) {
        this.ahead = new ArrayDeque<>(turns);
        this.bringsBack = bringsBack;
        this.until = until;
        this.level = level;
    }

    /** Each turn once, however long it takes. */
    static Drill of(List<Turn> turns, Level level) {
        return new Drill(turns, false, Long.MAX_VALUE, level);
    }

    /** @param until when nothing more is asked, in milliseconds since 1970 in UTC */
    static Drill review(List<Turn> turns, long until, Level level) {
        return new Drill(turns, true, until, level);
    }

    boolean isOver(long now) {
        return ahead.isEmpty() && again.isEmpty() || open != null && now >= until;
    }

    /** The next question; {@link #note} is about it. */
    Question next(LongSupplier seeds) {
        returning = ahead.isEmpty() ? again.remove() : null;
        open = returning == null ? ahead.remove().question(seeds, open, level) : back(seeds);
        return open;
    }

    /** What was missed longest ago; if it has just been asked, another question like it. */
    private Question back(LongSupplier seeds) {
        return returning.toString().equals(open.toString())
                ? new Turn(Skills.find(returning.skillId()).orElseThrow(), returning.key()).question(seeds, open, level)
                : returning;
    }

    /** Counts what came of the last question. */
    void note(boolean rightAtOnce) {
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
        if (bringsBack) {
            again.add(open);
        }
    }

    private void noteBack(boolean right) {
        if (right) {
            second++;
            missed.remove(returning);
        }
    }

    DrillEnd end() {
        return new DrillEnd(asked, atOnce, second, missed);
    }
}
