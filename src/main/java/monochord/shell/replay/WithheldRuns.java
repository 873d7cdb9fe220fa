package monochord.shell.replay;

import monochord.cell.Cell;
import monochord.text.Phrase;

/** Keeps back what somebody else's file would have run, and counts it. */
final class WithheldRuns {
    private int count;
    private final Cell cell =
            Cell.runningNothing(Phrase.of("This is somebody else's Java; it was not run."), text -> count++);

    /** In which nothing runs. */
    Cell cell() {
        return cell;
    }

    /** How many times something was to be run. */
    int count() {
        return count;
    }
}
