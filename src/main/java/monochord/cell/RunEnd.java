package monochord.cell;

import monochord.cell.sandbox.Limits;
import monochord.text.Phrase;

/** How a run of a cell ended. */
enum RunEnd {
    GOOD,
    /** Refused by the compiler; the cell has said why. */
    REFUSED,
    STOPPED(Phrase.sentence("Stopped."), CellFailure.FailureKind.STOPPED, false),
    TOO_LONG(
            Phrase.sentence("Stopped, for it took longer than a cell may take."),
            CellFailure.FailureKind.BROKEN,
            false),
    UNSTOPPABLE(
            Phrase.sentence("This cell would not stop, so its Java was ended."), CellFailure.FailureKind.BROKEN, true),
    OUT_OF_MEMORY(
            Phrase.sentence("This cell used up all its memory (256 MB), and its Java has ended."),
            CellFailure.FailureKind.BROKEN,
            true),
    CROWDED(
            Phrase.sentence("This cell started more threads than a cell may have, so its Java was ended."),
            CellFailure.FailureKind.BROKEN,
            true),
    LEFT(
            Phrase.sentence("This cell told Java to end. It did; the line goes on."),
            CellFailure.FailureKind.BROKEN,
            true),
    LOST(Phrase.sentence("The cell's Java has ended, and nobody knows why."), CellFailure.FailureKind.BROKEN, true);

    private final Phrase words;
    private final CellFailure.FailureKind kind;
    private final boolean fatal;

    RunEnd() {
        this(Phrase.NOTHING, null, false);
    }

    RunEnd(Phrase words, CellFailure.FailureKind kind, boolean fatal) {
        this.words = words;
        this.kind = kind;
        this.fatal = fatal;
    }

    /** What the exit status of the cell's JVM says, when it ended without a word. */
    static RunEnd byExit(int exit) {
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

    /** What kind of failure it is; null where there are no words. */
    CellFailure.FailureKind kind() {
        return kind;
    }

    /** Whether the JVM is of no use any more. */
    boolean isFatal() {
        return fatal;
    }
}
