package monochord.shell;

import monochord.cell.Cell;

/** A JVM for Java that is handed from one sitting to the next: its start takes longer than all that is typed into it. */
final class SpareCell {
    private static Cell spare;

    private SpareCell() {}

    static void lend(Typist typist) {
        if (spare != null) {
            typist.sitting().cells().take(spare);
            spare = null;
        }
    }

    static void takeBack(Typist typist) {
        if (!typist.sitting().hasEnded()) {
            spare = typist.sitting().cells().handOver();
        }
    }

    static void close() {
        if (spare != null) {
            spare.close();
            spare = null;
        }
    }
}
