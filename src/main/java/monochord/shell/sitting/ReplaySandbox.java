package monochord.shell.sitting;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import monochord.theory.note.Unreadable;

/**
 * What closes a sitting off from the world while a notebook is typed again: file names lead into an empty folder and never
 * out of it, and there is an end to how much may be typed, also where a notebook has notebooks typed.
 *
 * <p>Source of the attack classes: OWASP, "Path Traversal" and "Denial of Service Cheat Sheet", titles from memory.
 */
public final class ReplaySandbox {
    private static final int MOST_LINES = 10_000;
    private static final int DEEPEST = 2;

    private final Path folder;
    private final int depth;
    private final AtomicInteger left;
    private final AtomicBoolean stopped;
    private final Map<String, Path> attached = new HashMap<>();

    private ReplaySandbox(Path folder, int depth, AtomicInteger left, AtomicBoolean stopped) {
        this.folder = folder.toAbsolutePath().normalize();
        this.depth = depth;
        this.left = left;
        this.stopped = stopped;
    }

    /** @param folder empty, and nobody else's */
    public static ReplaySandbox around(Path folder) {
        return new ReplaySandbox(folder, 1, new AtomicInteger(MOST_LINES), new AtomicBoolean());
    }

    /** A sandbox for a replay within this one; both count the same lines. */
    public ReplaySandbox within(Path inner) {
        return new ReplaySandbox(inner, depth + 1, left, stopped);
    }

    /** Whether another one may be set within. */
    public boolean isDeepest() {
        return depth >= DEEPEST;
    }

    /** Takes one of the lines that may still be typed; false if there is none. */
    public boolean takesLine() {
        return left.getAndDecrement() > 0;
    }

    /** Stops this replay and those within it. Thread-safe. */
    void stop() {
        stopped.set(true);
    }

    /** Whether this replay, or one around it, was stopped. */
    public boolean isStopped() {
        return stopped.get();
    }

    /**
     * Puts a file there that stands in what is typed again; under its name it is found, whatever folder that names.
     *
     * @throws IOException if it cannot be written
     */
    public void put(String name, String text) throws IOException {
        Path place = folder.resolve("kept-" + attached.size());
        Files.createDirectories(place);
        String last = name.replaceFirst(".*[/\\\\]", "");
        Path file = place.resolve(last.isBlank() || last.startsWith(".") ? "song" : last)
                .normalize();
        if (!file.startsWith(place)) {
            throw new IOException("no name for a file: " + name);
        }
        Files.writeString(file, text);
        attached.put(name, file);
    }

    /** @throws Unreadable if the name leads out, by itself or along a link */
    Path file(String name) {
        if (attached.containsKey(name)) {
            return attached.get(name);
        }
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
