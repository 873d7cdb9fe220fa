package monochord.shell.sitting;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import monochord.theory.Unreadable;

/**
 * What closes a sitting off from the world while a notebook is typed again: file names lead into an empty folder and never
 * out of it, and there is an end to how much may be typed, also where a notebook has notebooks typed.
 *
 * <p>Source of the attack classes: OWASP, "Path Traversal" and "Denial of Service Cheat Sheet", titles from memory.
 */
public final class Seal {
    private static final int MOST_LINES = 10_000;
    private static final int DEEPEST = 2;

    private final Path folder;
    private final int depth;
    private final AtomicInteger left;
    private final AtomicBoolean stopped;

    private Seal(Path folder, int depth, AtomicInteger left, AtomicBoolean stopped) {
        this.folder = folder.toAbsolutePath().normalize();
        this.depth = depth;
        this.left = left;
        this.stopped = stopped;
    }

    /** @param folder empty, and nobody else's */
    public static Seal around(Path folder) {
        return new Seal(folder, 1, new AtomicInteger(MOST_LINES), new AtomicBoolean());
    }

    /** A seal within this one, with what is left here. */
    public Seal within(Path inner) {
        return new Seal(inner, depth + 1, left, stopped);
    }

    /** Whether another one may be set within. */
    public boolean isDeepest() {
        return depth >= DEEPEST;
    }

    /** Takes one of the lines that may still be typed; false if there is none. */
    public boolean takesLine() {
        return left.getAndDecrement() > 0;
    }

    /** Somebody has had enough; from another thread. */
    void stop() {
        stopped.set(true);
    }

    /** Whether somebody has had enough of what is typed within this seal, or a seal around it. */
    public boolean isStopped() {
        return stopped.get();
    }

    /** @throws Unreadable if the name leads out, by itself or along a link */
    Path file(String name) {
        Path file = folder.resolve(name).normalize();
        if (!file.startsWith(folder) || leadsOut(file)) {
            throw Unreadable.because(name, 0, "a file name", "in a replay no file outside is touched", "evening.md");
        }
        return file;
    }

    Path folder() {
        return folder;
    }

    /** Whether any step of the way there is a link; none is made in a sitting, so one comes from somewhere else. */
    private boolean leadsOut(Path file) {
        for (Path step = file; !step.equals(folder); step = step.getParent()) {
            if (Files.isSymbolicLink(step)) {
                return true;
            }
        }
        return false;
    }
}
