package monochord.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.harmony.after.SongCounts;
import monochord.harmony.key.KeyCounts;

/** What is read, named and resolved, one a line; the same files serve the other side of the comparison. */
final class Lists {
    private static final Path FOLDER = Path.of("src", "bench", "lists");

    private Lists() {}

    /** The counts that keys are found by, as the program has them. */
    static KeyCounts keyCounts() {
        return KeyCounts.of(counts("key-profiles.tsv"), SongCounts.parse(counts("next-chord.tsv")));
    }

    private static String counts(String file) {
        try (InputStream in = Lists.class.getResourceAsStream("/monochord/shell/verb/music/" + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<String> lines(String name) {
        try {
            return Files.readAllLines(FOLDER.resolve(name + ".txt"));
        } catch (IOException missing) {
            throw new UncheckedIOException("benchmarks run from the folder of the pom", missing);
        }
    }
}
