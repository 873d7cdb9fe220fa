package monochord.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.concurrent.atomic.AtomicLong;
import monochord.text.Failure;
import monochord.text.Phrase;

/** Writes a file whole or not at all: beside its place first, then moved onto it. */
public final class WholeFile {
    private static final AtomicLong COUNT = new AtomicLong();

    /** Fills a file that does not exist yet. */
    public interface Content {
        void into(Path part) throws IOException;
    }

    private WholeFile() {}

    /** @throws IOException with the message {@code path: what is wrong}; what stood there before stays */
    public static void write(Path file, Content content) throws IOException {
        Path place = file.toAbsolutePath();
        check(file, place);
        Path part = place.resolveSibling("." + place.getFileName() + "." + unique() + ".part");
        try {
            content.into(part);
            move(part, place);
        } catch (IOException wrong) {
            throw new Failure(file.toString(), what(wrong), wrong);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void check(Path file, Path place) throws IOException {
        if (Files.isDirectory(place)) {
            throw new Failure(file.toString(), Phrase.of("is a folder, not a file"));
        }
        if (!Files.isDirectory(place.getParent())) {
            Path folder = (file.getParent() == null ? place : file).getParent();
            throw Failure.noFolder(file.toString(), String.valueOf(folder));
        }
    }

    /** Tells apart two writers of one file, in one process or in two. */
    private static String unique() {
        return ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet();
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
