package monochord.shell.replay;

import java.util.Iterator;
import java.util.List;
import monochord.notebook.Notebook;

/**
 * A notebook typed again.
 *
 * @param turns one for each exchange, in order
 */
public record Replayed(Notebook written, List<Turn> turns) {
    public Replayed {
        turns = List.copyOf(turns);
    }

    public List<Turn> differences() {
        return turns.stream().filter(Turn::differs).toList();
    }

    /** Code of somebody's that was not run. */
    public List<Turn> skipped() {
        return turns.stream().filter(Turn::isSkipped).toList();
    }

    /** The notebook with the answers that came now. */
    public Notebook played() {
        Iterator<Turn> next = turns.iterator();
        return written.with(exchange -> next.next().played());
    }
}
