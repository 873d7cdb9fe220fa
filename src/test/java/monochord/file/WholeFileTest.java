package monochord.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("attack")
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

    @Test
    void aLinkStaysOneAndWhatItLeadsToIsWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("tune.mid"), "an older tune");
        Path link = Files.createSymbolicLink(folder.resolve("today.mid"), Path.of("tune.mid"));
        write(link);
        assertEquals(Path.of("tune.mid"), Files.readSymbolicLink(link));
        assertEquals("a tune", Files.readString(file));
        assertEquals(List.of("today.mid", "tune.mid"), names());
    }

    @Test
    void aLinkThatLeadsNowhereIsSaidToBeOne() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("today.mid"), Path.of("gone.mid"));
        IOException wrong = assertThrows(IOException.class, () -> write(link));
        assertEquals(link + ": is a link that leads nowhere", wrong.getMessage());
        assertEquals(List.of("today.mid"), names());
    }

    @Test
    void aPipeStaysOne() throws Exception {
        Path pipe = folder.resolve("pipe.wav");
        assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
        IOException wrong = assertThrows(IOException.class, () -> write(pipe));
        assertEquals(pipe + ": is a device or a pipe, not a file", wrong.getMessage());
        assertTrue(Files.readAttributes(pipe, BasicFileAttributes.class).isOther());
    }

    @Test
    void whoMightReadTheOldFileMayReadTheNewOne() throws IOException {
        Path file = Files.writeString(folder.resolve("tune.mid"), "an older tune");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        write(file);
        assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void whatIsPrivateIsItsOwnersAlone() throws IOException {
        Path place = OwnerOnly.folder(folder.resolve("home")).resolve("settings");
        WholeFile.writePrivately(place, part -> Files.writeString(part, "bank=mine"));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(place)));
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(place.getParent())));
        Files.setPosixFilePermissions(place, PosixFilePermissions.fromString("r--r--r--"));
        OwnerOnly.file(place);
        assertEquals("r--------", PosixFilePermissions.toString(Files.getPosixFilePermissions(place)));
    }

    @Test
    void whatAKilledWriterLeftGoesWithTheNextWriting() throws Exception {
        Process ended = new ProcessBuilder("true").start();
        ended.waitFor();
        Path left = Files.writeString(folder.resolve(".tune.mid." + ended.pid() + "-1.part"), "half");
        Path young = Files.writeString(folder.resolve(".tune.mid." + ended.pid() + "-2.part"), "half");
        Path other = Files.writeString(folder.resolve(".song.mid." + ended.pid() + "-1.part"), "half");
        for (Path old : List.of(left, other)) {
            Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofDays(1))));
        }
        write(folder.resolve("tune.mid"));
        assertEquals(List.of(other.getFileName().toString(), young.getFileName().toString(), "tune.mid"), names());
    }
}
