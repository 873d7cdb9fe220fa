package monochord.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    Path folder;

    private static void write(Path file) throws IOException {
        WholeFile.write(file, part -> Files.writeString(part, "a tune"));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void replacesWhatWasThereAndLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("tune.mid");
        Files.writeString(file, "an older tune");
        write(file);
        assertEquals(List.of("tune.mid"), names());
        assertEquals("a tune", Files.readString(file));
    }

    @Test
    void saysWhichFolderIsMissing() {
        Path file = folder.resolve("nowhere").resolve("tune.mid");
        IOException missing = assertThrows(IOException.class, () -> write(file));
        assertEquals(file + ": there is no folder " + file.getParent(), missing.getMessage());
    }

    @Test
    void saysThatAFolderIsNoFile() throws IOException {
        Path file = Files.createDirectory(folder.resolve("tune.wav"));
        IOException wrong = assertThrows(IOException.class, () -> write(file));
        assertEquals(file + ": is a folder, not a file", wrong.getMessage());
    }

    @Test
    void keepsTheOldFileWhenTheNewOneFails() throws IOException {
        Path file = folder.resolve("tune.mid");
        Files.writeString(file, "an older tune");
        IOException failed = assertThrows(
                IOException.class,
                () -> WholeFile.write(file, part -> {
                    Files.writeString(part, "half a tune");
                    throw new IOException("no space left");
                }));
        assertEquals(file + ": no space left", failed.getMessage());
        assertEquals("an older tune", Files.readString(file));
        assertEquals(List.of("tune.mid"), names());
    }
}
