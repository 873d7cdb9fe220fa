package monochord.shell.cell;

import monochord.shell.cell.far.Limits;
import monochord.text.Phrase;
import monochord.view.Answer;

/** How a run of a cell ended. */
enum End {
    GOOD(Phrase.NOTHING, Answer.DONE, false),
    /** Refused by the compiler; the cell has said why. */
    REFUSED(Phrase.NOTHING, Answer.UNREADABLE, false),
    STOPPED(Phrase.sentence("Stopped."), Answer.NO, false),
    TOO_LONG(Phrase.sentence("Stopped, for it took longer than a cell may take."), Answer.FAILED, false),
    UNSTOPPABLE(Phrase.sentence("This cell would not stop, so its Java was ended."), Answer.FAILED, true),
    OUT_OF_MEMORY(
            Phrase.sentence("This cell used up all its memory (256 MB), and its Java has ended."), Answer.FAILED, true),
    CROWDED(
            Phrase.sentence("This cell started more threads than a cell may have, so its Java was ended."),
            Answer.FAILED,
            true),
    LEFT(Phrase.sentence("This cell told Java to end. It did; the line goes on."), Answer.FAILED, true),
    LOST(Phrase.sentence("The cell's Java has ended, and nobody knows why."), Answer.FAILED, true);

    private final Phrase words;
    private final int status;
    private final boolean fatal;

    End(Phrase words, int status, boolean fatal) {
        this.words = words;
        this.status = status;
        this.fatal = fatal;
    }

    /** What the exit status of the cell's JVM says, when it ended without a word. */
    static End byExit(int exit) {
        return switch (exit) {
            case Limits.OUT_OF_MEMORY -> OUT_OF_MEMORY;
            case Limits.TOO_MANY_THREADS -> CROWDED;
            default -> LOST;
        };
    }

    /** Nothing where the cell itself has said what there is to say. */
    Phrase words() {
        return words;
    }

    int status() {
        return status;
    }

    /** Whether the JVM is of no use any more. */
    boolean isFatal() {
        return fatal;
    }
}
