package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.view.StrictJson;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole runs that read and write files. */
class CommandLineFilesTest {
    @TempDir
    Path folder;

    @Test
    void musicIsWrittenIntoTheFolderTheRunBeganIn() throws IOException {
        Run run = new Run.Outside().inFolder(folder).run("play IV I --wav two chords.wav --midi a.mid".split(" "));
        assertEquals(0, run.status(), run.err());
        assertArrayEquals(new byte[] {'M', 'T', 'h', 'd'}, start(folder.resolve("a.mid")));
        assertArrayEquals(new byte[] {'R', 'I', 'F', 'F'}, start(folder.resolve("two chords.wav")));
        assertTrue(run.out().startsWith("Written: "), run.out());
    }

    private static byte[] start(Path file) throws IOException {
        return java.util.Arrays.copyOf(Files.readAllBytes(file), 4);
    }

    @Test
    void aFileThatCannotBeWrittenIsStatusThree() throws IOException {
        Files.createDirectory(folder.resolve("taken.wav"));
        Files.writeString(folder.resolve("plain"), "x");
        for (String file : List.of("nowhere/a.wav", "taken.wav", "plain/a.wav")) {
            Run run = new Run.Outside().inFolder(folder).run("play", "C", "--wav", file);
            String message = run.message(3);
            assertTrue(
                    message.replace("\n", "")
                            .contains(Path.of(file).getFileName().toString()),
                    message);
            assertFalse(message.contains("Exception"), message);
            Run midi = new Run.Outside().inFolder(folder).run("play", "C", "--midi", file, "--json");
            assertEquals(3, midi.status());
            assertTrue(StrictJson.object(midi.out().strip()).containsKey("error"));
        }
    }

    @Test
    void aFileNeedsAName() {
        assertEquals(2, Run.of("play C --wav").status());
        assertEquals(2, new Run.Outside().run("play", "C", "--midi", "a\0b").status());
    }

    @Test
    void aFolderWithoutLessonsIsNoFault() {
        Run.Outside nowhere = new Run.Outside().withLessons(folder.resolve("none"));
        assertEquals(
                "There are no lessons where they should be.\n",
                nowhere.run("lessons").result(0));
        assertEquals(
                "{\"kind\":\"lessons\",\"lessons\":[]}\n",
                nowhere.run("lessons", "--json").result(0));
        assertEquals(2, nowhere.run("learn").status());
        assertEquals(2, nowhere.run("learn", "1.1").status());
        assertEquals(0, nowhere.run("check").status());
        assertTrue(nowhere.typing("\n").run().result(0).startsWith("Type a chord"));
    }

    @Test
    void aLessonWithFaultsDoesNotHideTheGoodOnes() throws IOException {
        Path book = Files.createDirectory(folder.resolve("1-a-book"));
        Files.copy(
                Run.OUR_LESSONS.resolve("1-how-scales-are-built/1-steps-and-half-steps.md"),
                book.resolve("1-steps.md"));
        Path tune = Path.of("tunes", "joy-to-the-world.md");
        Files.createDirectory(folder.resolve("tunes"));
        Files.copy(Run.OUR_LESSONS.resolve(tune), folder.resolve(tune));
        Files.writeString(
                book.resolve("2-broken.md"),
                "---\ntitle: Broken\ngrade: 1\nskills: [stepz]\n---\n\n```show\nH\33[2J\n```\n");
        Run.Outside library = new Run.Outside().withLessons(folder);

        String list = library.run("lessons").result(0);
        assertTrue(list.contains("  1.1  Steps and half steps\n"), list);
        assertTrue(list.contains("  1.2  Broken  has faults: check it\n"), list);
        assertEquals(0, library.run("learn", "1.1").status());
        Run learn = library.run("learn", "1.2");
        assertEquals(1, learn.status());
        assertTrue(learn.out().contains("2-broken.md:"), learn.out());
        Run check = library.run("check");
        assertEquals(List.of(1, ""), List.of(check.status(), check.err()));
        assertTrue(check.out().chars().noneMatch(c -> c == 033), check.out());
        assertEquals(1, library.run("check", "--json").lines().size());
        assertTrue(library.typing("learn 1.2\nlearn 1.1\n").run().out().contains("1.1  Steps and half steps"));
    }

    // --- sound
}
