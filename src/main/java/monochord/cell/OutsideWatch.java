package monochord.cell;

import java.io.IOException;
import java.util.List;

/**
 * A process beside a cell's JVM that ends it when the line has gone, whatever the cell has done to the threads that should
 * see that themselves; it waits a little first, for a sound JVM tidies up after itself. Where the system has no such shell
 * there is none.
 */
final class OutsideWatch {
    /** Reads until the line has gone, which shuts the pipe; then what is left of the cell ends, and its folder goes. */
    private static final String SCRIPT =
            "read -r gone; sleep 6; kill -9 -\"$1\" \"$1\" 2>/dev/null; case $2 in */monochord-cell-*) rm -rf \"$2\" ;; esac";

    private final Process process;

    private OutsideWatch(Process process) {
        this.process = process;
    }

    /** One over that JVM, in a session of its own, where ctrl-C does not reach it. */
    static OutsideWatch over(Process cell, String folder) {
        try {
            return Confinement.program("sh")
                    .flatMap(shell -> Confinement.program("setsid")
                            .map(session ->
                                    List.of(session, shell, "-c", SCRIPT, "watch", Long.toString(cell.pid()), folder)))
                    .map(OutsideWatch::start)
                    .orElse(new OutsideWatch(null));
        } catch (IllegalStateException none) {
            return new OutsideWatch(null);
        }
    }

    private static OutsideWatch start(List<String> command) {
        try {
            return new OutsideWatch(new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start());
        } catch (IOException none) {
            throw new IllegalStateException(none);
        }
    }

    /** The cell is ended: there is nothing to watch over. */
    void end() {
        if (process != null) {
            process.destroyForcibly();
        }
    }
}
