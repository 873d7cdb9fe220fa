package monochord.shell.replay;

import java.util.Iterator;
import java.util.List;
import monochord.notebook.Notebook;

/**
 * A notebook typed again.
 *
 * @param turns one for each exchange, in order
 */
public record Replayed(Notebook written, List<ReplayTurn> turns) {
    public Replayed {
        turns = List.copyOf(turns);
    }

    public List<ReplayTurn> differences() {
        return turns.stream().filter(ReplayTurn::differs).toList();
    }

    /** Code of somebody's that was not run. */
    public List<ReplayTurn> skipped() {
        return turns.stream().filter(ReplayTurn::isSkipped).toList();
    }

    /** The notebook with the answers that came now. */
    public Notebook played() {
        Iterator<ReplayTurn> next = turns.iterator();
        return written.with(exchange -> next.next().played());
    }
}
