package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.record.Bookmarks;
import monochord.shell.storage.RecordKeeper;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lesson that is left keeps its place on disk, and one that is finished is marked. */
class LessonPlaceTest {
    @TempDir
    private Path home;

    private List<String> sitting(String... lines) {
        Run.Outside outside = new Run.Outside().atHome(home);
        return new Run.Outside(
                        (String.join("\n", lines) + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8),
                        outside.environment(),
                        outside.folder(),
                        outside.lessons(),
                        outside.ear(),
                        outside.clock(),
                        RecordKeeper::new)
                .run()
                .lines();
    }

    @Test
    @DisplayName(
            "left by another verb, by the end of the lines or by skip, it goes on at its page and question, in its key")
    void goesOnWhereItWasLeft() {
        List<String> first = sitting("learn 1.2 in D", "", "G A B C D E F#", "show C");
        assertTrue(first.contains("Spell F major, from F."), first.toString());
        List<String> again = sitting("learn 1.2");
        assertEquals("1.2  Seven letters, each once  in D major", again.get(0));
        assertTrue(
                sitting("learn 1.2", "key").contains("D major: two sharps, F♯ and C♯."),
                "and the key of the line with it");
        assertTrue(again.stream().anyMatch(line -> line.matches("Spell .* major, from .*\\.")), again.toString());
        List<String> anew = sitting("learn 1.2 in C");
        assertTrue(anew.contains("You can find a major scale by ear. Writing it down needs one rule more: seven"));
    }

    @Test
    @DisplayName("a finished lesson is marked in the list, in words and in JSON, and begins anew")
    void isMarkedWhenFinished() throws IOException {
        new Bookmarks(java.util.Set.of(), java.util.Map.of())
                .finished("steps-and-half-steps")
                .write(home);
        List<String> listed = sitting("lessons 1");
        assertTrue(listed.contains("  1.1  Steps and half steps  done"), listed.toString());
        assertTrue(listed.contains("  1.2  Seven letters, each once"), listed.toString());
        List<String> begun = sitting("learn 1.1", "lessons 1");
        assertTrue(begun.contains("  1.1  Steps and half steps  done, waiting where you left it"), begun.toString());
    }

    @Test
    @DisplayName("what was written is read, and what cannot be read is nothing")
    void isReadAsWritten() throws IOException {
        Bookmarks marks = Bookmarks.NONE
                .finished("seven-letters")
                .leftAt("stacking-thirds", new Bookmarks.LessonPlace(3, 1, 2, 5, 4, "Bb major"));
        marks.write(home);
        assertEquals(marks, Bookmarks.read(home));
        Files.writeString(home.resolve("bookmarks"), "bookmarks 1\nat somewhere x\n");
        assertEquals(Bookmarks.NONE, Bookmarks.read(home));
    }
}
