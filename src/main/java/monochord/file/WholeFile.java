package monochord.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * Writes a file whole or not at all: beside its place first, then moved onto it. A link stays one, and what it leads to is
 * written; a device or a pipe is refused. Whoever might read the old file may read the new one.
 */
public final class WholeFile {
    /** Fills a file that does not exist yet, or is empty. */
    public interface Content {
        void into(Path part) throws IOException;
    }

    private WholeFile() {}

    /** @throws IOException with the message {@code path: what is wrong}; what stood there before stays */
    public static void write(Path file, Content content) throws IOException {
        write(file, content, false);
    }

    /** The same for what is nobody else's business: only its owner may read it. */
    public static void writePrivately(Path file, Content content) throws IOException {
        write(file, content, true);
    }

    private static void write(Path file, Content content, boolean privately) throws IOException {
        Path place = place(file);
        check(file, place);
        Parts.sweep(place);
        Path part = Parts.begin(place);
        try {
            if (privately) {
                OwnerOnly.file(part);
            }
            content.into(part);
            if (!privately) {
                OwnerOnly.copy(place, part);
            }
            move(part, place);
        } catch (IOException wrong) {
            throw new Failure(file.toString(), what(wrong), wrong);
        } finally {
            Parts.end(part);
        }
    }

    /** Where the file is in the end, behind all links. */
    private static Path place(Path file) throws IOException {
        Path place = file.toAbsolutePath();
        if (!Files.isSymbolicLink(place)) {
            return place;
        }
        try {
            return place.toRealPath();
        } catch (IOException astray) {
            throw new Failure(file.toString(), Phrase.of("is a link that leads nowhere"), astray);
        }
    }

    private static void check(Path file, Path place) throws IOException {
        if (Files.isDirectory(place)) {
            throw new Failure(file.toString(), Phrase.of("is a folder, not a file"));
        }
        if (Files.exists(place) && !Files.isRegularFile(place)) {
            throw new Failure(file.toString(), Phrase.of("is a device or a pipe, not a file"));
        }
        if (!Files.isDirectory(place.getParent())) {
            Path folder = (file.getParent() == null ? place : file).getParent();
            throw Failure.noFolder(file.toString(), String.valueOf(folder));
        }
    }

    private static void move(Path part, Path place) throws IOException {
        try {
            Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(part, place, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static Phrase what(IOException wrong) {
        if (wrong instanceof AccessDeniedException) {
            return Phrase.of("no permission to write there");
        }
        if (wrong instanceof FileSystemException trouble && trouble.getReason() != null) {
            return Phrase.typed(trouble.getReason());
        }
        return Failure.told(wrong);
    }
}
