package monochord.cell.sandbox;

import java.io.IOException;
import monochord.cell.protocol.WorkingFolder;

/** The end of this JVM when the line is gone, whoever sees that first; the working folder goes, too. */
final class JvmExit {
    private static final int CLEAN_MILLIS = 5000;

    private JvmExit() {}

    /** Does not return. Who comes second waits for the first. */
    static synchronized void withLine() {
        Thread limit = new Thread(() -> {
            Watchdog.sleep(CLEAN_MILLIS);
            Runtime.getRuntime().halt(0);
        });
        limit.setDaemon(true);
        limit.start();
        try {
            WorkingFolder.here().remove();
        } catch (IOException gone) {
            // removed already, by the line
        }
        Runtime.getRuntime().halt(0);
    }
}
