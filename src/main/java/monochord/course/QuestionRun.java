package monochord.course;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Difficulty;
import monochord.practice.drill.Tally;
import monochord.practice.drill.Turn;
import monochord.practice.skill.Skills;

/**
 * A run of questions being asked, and how it went so far. In a review and in a day's set what was missed comes back once, at
 * the end, while there is time. After two misses in a row it grows easier, after five hits harder.
 */
public final class QuestionRun implements Activity {
    private static final int MISSES = 2;
    private static final int HITS = 5;
    private static final int MOST_STEPS = 2;

    private final List<Turn> ahead;
    private final Deque<Question> again = new ArrayDeque<>();
    private final List<Question> missed = new ArrayList<>();
    private final RunKind kind;
    private final long until;
    private final Difficulty level;
    private Turn hands;
    private boolean isHands;
    private int streak;
    private int steps;
    private Pacing pacing = Pacing.AS_BEFORE;
    private Question open;
    private Question returning;
    private boolean isSettled = true;
    private int put;
    private int asked;
    private int atOnce;
    private int second;

    /** What it is for. */
    public enum RunKind {
        /** One skill, somebody's own choice. */
        RUN,
        /** What is due. */
        REVIEW,
        /** The day's set. */
        SET
    }

    /** Whether the next question is to be easier or harder than those before. */
    public enum Pacing {
        AS_BEFORE,
        EASIER,
        HARDER
    }

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

    private QuestionRun(List<Turn> turns, RunKind kind, long until, Difficulty level) {
        this.ahead = new ArrayList<>(turns);
        this.kind = kind;
        this.until = until;
        this.level = level;
    }

    /** Each turn once, however long it takes. */
    public static QuestionRun of(List<Turn> turns, Difficulty level) {
        return new QuestionRun(turns, RunKind.RUN, Long.MAX_VALUE, level);
    }

    /** @param until when nothing more is asked, in milliseconds since 1970 in UTC */
    public static QuestionRun review(List<Turn> turns, long until, Difficulty level) {
        return new QuestionRun(turns, RunKind.REVIEW, until, level);
    }

    /**
     * A day's set, from its beginning or from where it was cut off.
     *
     * @param before what came of the questions before
     */
    public static QuestionRun set(DailySet set, Tally before, Difficulty level) {
        QuestionRun run = new QuestionRun(set.turns(), RunKind.SET, Long.MAX_VALUE, level);
        run.hands = set.hands();
        run.put = before.asked();
        run.asked = before.asked();
        run.atOnce = before.right();
        return run;
    }

    public RunKind kind() {
        return kind;
    }

    /** Whether the last question is to be played at an instrument. */
    public boolean isAtInstrument() {
        return isHands;
    }

    /** Whether the question that was put last is easier or harder than those before, and why it is said. */
    public Pacing pacing() {
        return pacing;
    }

    @Override
    public int nearness() {
        return 2;
    }

    /** Of the question that was put last; what has to come back counts as soon as that is known. */
    public Position place() {
        return new Position(Position.Unit.QUESTION, put, put + ahead.size() + again.size() + (hands == null ? 0 : 1));
    }

    /** Whether nothing more is asked; a question that waits to be answered is asked still. */
    public boolean isOver(long now) {
        return isSettled && (ahead.isEmpty() && again.isEmpty() && hands == null || open != null && now >= until);
    }

    /** The question that waits, else the next one; {@link #note} and {@link #pass} are about it. */
    public Question next(LongSupplier seeds) {
        if (isSettled) {
            returning = null;
            open = drawn(seeds);
            isSettled = false;
            put++;
        } else {
            pacing = Pacing.AS_BEFORE;
        }
        return open;
    }

    private Question drawn(LongSupplier seeds) {
        pacing = paced();
        if (!ahead.isEmpty()) {
            return taken().question(seeds, open, level.shifted(steps));
        }
        if (!again.isEmpty()) {
            pacing = Pacing.AS_BEFORE;
            returning = again.remove();
            return back(seeds);
        }
        pacing = Pacing.AS_BEFORE;
        isHands = true;
        Turn last = hands;
        hands = null;
        return last.question(seeds, open, level);
    }

    /** After a row of misses or hits what comes next is chosen otherwise, and the row begins anew. */
    private Pacing paced() {
        if (streak > -MISSES && streak < HITS) {
            return Pacing.AS_BEFORE;
        }
        Pacing now = streak < 0 ? Pacing.EASIER : Pacing.HARDER;
        int before = steps;
        steps = Math.max(-MOST_STEPS, Math.min(MOST_STEPS, steps + Integer.signum(streak)));
        streak = 0;
        return steps == before ? Pacing.AS_BEFORE : now;
    }

    /** The next turn in order; the one in the easiest key after misses, in the hardest after hits. */
    private Turn taken() {
        Comparator<Turn> byDifficulty = Comparator.comparingDouble(Turn::difficulty);
        Turn turn = switch (pacing) {
            case AS_BEFORE -> ahead.get(0);
            case EASIER -> Collections.min(ahead, byDifficulty);
            case HARDER -> Collections.max(ahead, byDifficulty);
        };
        ahead.remove(turn);
        return turn;
    }

    /** What was missed longest ago; if it has just been asked, another question like it. */
    private Question back(LongSupplier seeds) {
        return returning.toString().equals(open.toString())
                ? new Turn(skill(returning), returning.key()).question(seeds, open, level)
                : returning;
    }

    /** Leaves the last question without counting it. */
    public void pass() {
        isSettled = true;
    }

    /** Counts what came of the last question. */
    public void note(boolean rightAtOnce) {
        if (isSettled) {
            return;
        }
        isSettled = true;
        if (isHands) {
            return;
        }
        streak = rightAtOnce ? Math.max(streak, 0) + 1 : Math.min(streak, 0) - 1;
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
        if (kind != RunKind.RUN) {
            again.add(open);
        }
    }

    private void noteBack(boolean right) {
        if (right) {
            second++;
            missed.remove(returning);
        }
    }

    /** Leaves out everything that is not to be asked, and the question that waits if it is one of those. */
    public void leaveOut(Predicate<Skill> unwanted) {
        ahead.removeIf(turn -> unwanted.test(turn.skill()));
        again.removeIf(question -> unwanted.test(skill(question)));
        if (open != null && !isSettled && unwanted.test(skill(open))) {
            isSettled = true;
            put--;
        }
    }

    private static Skill skill(Question question) {
        return Skills.find(question.skillId()).orElseThrow();
    }

    /** What has not been asked to an end, to be gone on with another time. */
    public List<Turn> rest() {
        List<Turn> rest = new ArrayList<>();
        if (open != null && !isSettled && !isHands) {
            rest.add(new Turn(skill(open), open.key()));
        }
        rest.addAll(ahead);
        again.forEach(question -> rest.add(new Turn(skill(question), question.key())));
        return rest;
    }

    public Result result() {
        return new Result(asked, atOnce, second, missed);
    }
}
