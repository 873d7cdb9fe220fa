package monochord.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** What only its owner may read: a learner's record, drafts, history. Where a system knows no such thing, all stays as it is. */
public final class OwnerOnly {
    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");

    private OwnerOnly() {}

    /** Makes the folder, and those above it, where they are missing. One that is there stays open to whom it is. */
    public static Path folder(Path folder) throws IOException {
        return isPosix(folder)
                ? Files.createDirectories(folder, PosixFilePermissions.asFileAttribute(FOLDER))
                : Files.createDirectories(folder);
    }

    /** Closes a file to all others; makes an empty one where there is none. */
    public static Path file(Path file) throws IOException {
        if (!Files.exists(file)) {
            return isPosix(file)
                    ? Files.createFile(file, PosixFilePermissions.asFileAttribute(FILE))
                    : Files.createFile(file);
        }
        if (isPosix(file)) {
            closeToOthers(file);
        }
        return file;
    }

    /** Whether anybody but its owner may do anything with a file or a folder, as far as the system knows. */
    public static boolean isOpen(Path file) throws IOException {
        return isPosix(file) && !FOLDER.containsAll(Files.getPosixFilePermissions(file));
    }

    /** A file that is not ours to close stays open. */
    private static void closeToOthers(Path file) {
        try {
            Set<PosixFilePermission> open = Files.getPosixFilePermissions(file);
            if (open.retainAll(FOLDER)) {
                Files.setPosixFilePermissions(file, open);
            }
        } catch (IOException refused) {
            // It belongs to somebody else, who lets us use it.
        }
    }

    /** Opens the new file to whom the old one was open, if there is an old one. */
    static void copy(Path old, Path now) throws IOException {
        if (isPosix(old) && Files.exists(old)) {
            Files.setPosixFilePermissions(now, Files.getPosixFilePermissions(old));
        }
    }

    private static boolean isPosix(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix");
    }
}
