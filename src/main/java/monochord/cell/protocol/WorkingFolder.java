package monochord.cell.protocol;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * The folder of one cell's JVM, made for it and removed after it. Nothing is ever removed that is not such a folder: it has
 * a name that only {@link #make} gives.
 */
public record WorkingFolder(Path path) {
    private static final String PREFIX = "monochord-cell-";

    /** A new one that nobody else can look into. */
    public static WorkingFolder make() throws IOException {
        return new WorkingFolder(Files.createTempDirectory(PREFIX).toRealPath());
    }

    /** The folder in which this JVM was started. */
    public static WorkingFolder here() throws IOException {
        return new WorkingFolder(Path.of("").toRealPath());
    }

    boolean isOurs() {
        return path.getFileName() != null && path.getFileName().toString().startsWith(PREFIX);
    }

    /** Takes the folder away with all that a cell left in it; links in it are removed and not followed. */
    public void remove() {
        if (!isOurs()) {
            return;
        }
        try (Stream<Path> files = Files.walk(path)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | RuntimeException left) {
            // the system clears its temporary folder, too
        }
    }
}
