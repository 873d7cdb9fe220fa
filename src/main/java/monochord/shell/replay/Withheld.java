package monochord.shell.replay;

import monochord.shell.cell.Cell;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;

/** Keeps back what somebody else's file would have run, and counts it. */
final class Withheld {
    private final Cell cell = Cell.telling(this::keptBack);
    private int count;

    /** In which nothing runs. */
    Cell cell() {
        return cell;
    }

    /** How many times something was to be run. */
    int count() {
        return count;
    }

    private Answer keptBack(String text) {
        count++;
        return Statement.failed(Phrase.of("This is somebody else's Java; it was not run."));
    }
}
