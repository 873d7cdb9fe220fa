package monochord.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What is read, named and resolved, one a line; the same files serve the other side of the comparison. */
final class Lists {
    private static final Path FOLDER = Path.of("src", "bench", "lists");

    private Lists() {}

    static List<String> lines(String name) {
        try {
            return Files.readAllLines(FOLDER.resolve(name + ".txt"));
        } catch (IOException missing) {
            throw new UncheckedIOException("benchmarks run from the folder of the pom", missing);
        }
    }
}
