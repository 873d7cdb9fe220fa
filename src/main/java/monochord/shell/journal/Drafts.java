package monochord.shell.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import monochord.file.OwnerOnly;
import monochord.notebook.Notebook;

/**
 * The drafts in a learner's own folder: {@code open-…md} of a sitting that goes on or was broken off, {@code left-…md} of
 * one that ended without being saved. A sitting that goes on holds a lock on its draft, which the system takes away with
 * the process, so that a killed sitting is told from a living one. A few are kept, the eldest go.
 */
public final class Drafts {
    static final String OPEN = "open-";
    static final String LEFT = "left-";
    static final String FOREIGN = "-foreign";
    private static final String FOLDER = "drafts";
    private static final String ENDING = ".md";
    private static final int MOST = 8;

    private final Path folder;
    private final LongSupplier clock;
    private final Set<Path> ours = new HashSet<>();

    /**
     * @param home the folder for the learner's own things; nothing is made in it before something is noted
     * @param clock milliseconds since 1970 in UTC, for the names of the files
     */
    public Drafts(Path home, LongSupplier clock) {
        this.folder = home.resolve(FOLDER);
        this.clock = clock;
    }

    /** What keeps a draft for one sitting. */
    public Drafting drafting() {
        return new Draft(this, false);
    }

    /** The latest draft of a sitting that was broken off. */
    public Optional<Path> brokenOff() {
        return newestFirst(OPEN).stream().filter(file -> !isAlive(file)).findFirst();
    }

    /** The latest draft of any sitting that is over, one that was broken off before others. */
    public Optional<Path> latest() {
        return brokenOff().or(() -> newestFirst(LEFT).stream().findFirst());
    }

    /** Whether what is in this file was begun by opening somebody else's notebook. */
    public static boolean isForeign(Path draft) {
        return draft.getFileName().toString().endsWith(FOREIGN + ENDING);
    }

    /** A draft with a block for each exchange, as the notebook it was to become. */
    public static Notebook asNotebook(Notebook draft) {
        return NotebookText.merged(draft);
    }

    /** A file for a draft of this process, which is alive until {@link #leaves} is said of it. */
    Path newFile(boolean foreign) throws IOException {
        OwnerOnly.folder(folder);
        prune();
        String name = clock.getAsLong() + "-" + ProcessHandle.current().pid();
        int count = 0;
        Path file;
        do {
            file = folder.resolve(OPEN + name + "-" + ++count + (foreign ? FOREIGN : "") + ENDING);
        } while (Files.exists(file));
        ours.add(file);
        return file;
    }

    void leaves(Path file) {
        ours.remove(file);
    }

    /** Removes the eldest, so that with the one to come there are as many as are kept. */
    private void prune() throws IOException {
        List<Path> over =
                newestFirst("").stream().filter(file -> !isAlive(file)).toList();
        for (Path eldest : over.subList(Math.min(MOST - 1, over.size()), over.size())) {
            Files.deleteIfExists(eldest);
        }
    }

    private List<Path> newestFirst(String prefix) {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder, prefix + "*" + ENDING)) {
            all.forEach(files::add);
        } catch (IOException | DirectoryIteratorException none) {
            return List.of();
        }
        files.sort(Comparator.comparingLong(Drafts::time).reversed().thenComparing(Comparator.reverseOrder()));
        return files;
    }

    private static long time(Path file) {
        try {
            return Files.getLastModifiedTime(file).toMillis();
        } catch (IOException gone) {
            return 0;
        }
    }

    /** Our own are not looked into: on POSIX systems a process that closes a file anywhere loses its locks on it. */
    private boolean isAlive(Path file) {
        if (ours.contains(file)) {
            return true;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException ours) {
            return true;
        } catch (IOException unreadable) {
            return true;
        }
    }
}
