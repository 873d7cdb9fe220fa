package monochord.cell;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import monochord.shell.sitting.CellAnswers;
import monochord.theory.Key;
import monochord.view.Look;

/** A cell to try things on, with a limit that a test can set. */
final class Bench implements AutoCloseable {
    private static final Duration USUAL = Duration.ofHours(1);

    private volatile Duration limit = USUAL;
    private final JvmCell cell = new JvmCell(() -> limit);

    /** What is said to a text, in the key of C, its lines joined. */
    String says(String text) {
        return said(report(text), text);
    }

    /** The same with little patience. */
    String saysWithin(Duration time, String text) {
        limit = time;
        try {
            return says(text);
        } finally {
            limit = USUAL;
        }
    }

    CellReport report(String text) {
        return cell.run(text, Key.parse("C"));
    }

    /** Runs a text on another thread. */
    CompletableFuture<String> begins(String text) {
        return CompletableFuture.supplyAsync(() -> says(text));
    }

    static String said(CellReport report, String text) {
        return String.join(
                " ",
                List.of(CellAnswers.of(report, text)
                        .text(Look.ofPipe())
                        .plain()
                        .strip()
                        .split("\\s+")));
    }

    JvmCell cell() {
        return cell;
    }

    /** The process that runs the cell. */
    ProcessHandle process() {
        return ProcessHandle.of(cell.pid()).orElseThrow();
    }

    @Override
    public void close() {
        cell.close();
    }
}
