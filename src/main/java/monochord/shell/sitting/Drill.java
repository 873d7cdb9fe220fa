package monochord.shell.sitting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.LongSupplier;
import monochord.practice.Question;
import monochord.practice.drill.Turn;
import monochord.shell.answer.DrillEnd;

/** A run of questions being asked, and how it went so far. */
final class Drill {
    private final Deque<Turn> ahead;
    private final List<Question> missed = new ArrayList<>();
    private Question open;
    private int asked;

    Drill(List<Turn> turns) {
        ahead = new ArrayDeque<>(turns);
    }

    boolean isOver() {
        return ahead.isEmpty();
    }

    /** The next question; {@link #note} is about it. */
    Question next(LongSupplier seeds) {
        open = ahead.remove().question(seeds, open);
        return open;
    }

    /** Counts what came of the last question. */
    void note(boolean rightAtOnce) {
        asked++;
        if (!rightAtOnce) {
            missed.add(open);
        }
    }

    DrillEnd end() {
        return new DrillEnd(asked, missed);
    }
}
