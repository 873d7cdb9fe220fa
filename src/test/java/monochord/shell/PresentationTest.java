package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lesson before the Thursday class at Lantern Quay. */
class PresentationTest {
    private static final String LESSON = """
            ---
            title: The lowered sixth
            grade: 3
            needs: []
            skills: [borrowed-chord]
            ---

            The sixth of ${key} is where we begin.

            ## Spell it

            ```ask
            skill: borrowed-chord
            subject: bVI
            keys: same
            ```

            ## At home

            Play it in one more key.
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void writeTheLesson() throws IOException {
        Path book = Files.createDirectories(folder.resolve("lessons/1-colours"));
        Files.writeString(book.resolve("1-the-lowered-sixth.md"), LESSON);
    }

    private String room(String... lines) {
        Run run = new Run.Outside()
                .withLessons(folder.resolve("lessons"))
                .atHome(folder.resolve("home"))
                .typing(String.join("\n", lines) + "\nquit\n")
                .run();
        assertEquals("", run.err());
        return run.out();
    }

    @Test
    void theVerdictIsHeldBackUntilEnter() {
        String before = room("present 1.1 in D", "", "", "B D F#", "Bb D F");
        assertTrue(before.contains("Noted. Another answer, or Enter for the verdict."), before);
        assertFalse(before.contains("Yes"), before);
        String after = room("present 1.1 in D", "", "", "B D F#", "Bb D F", "");
        assertTrue(after.contains("Yes"), after);
        assertTrue(after.indexOf("B♭ D F") > after.lastIndexOf("Noted."), after);
    }

    @Test
    void oneThingAtATimeAndBackAgain() {
        String said = room("present 1.1 in D", "", "back");
        assertEquals(2, said.split("The sixth of D major is where we begin", -1).length - 1, said);
        assertFalse(said.contains("Play it in one more key"), said);
    }

    @Test
    void anotherKeyIsPickedOnTheFly() {
        String said = room("present 1.1 in D", "in Eb");
        assertTrue(said.contains("The sixth of E♭ major is where we begin"), said);
    }

    @Test
    void itEndsAndNothingIsKept() {
        String said = room("present 1.1", "", "", "Ab C Eb", "", "", "");
        assertTrue(said.contains("End of The lowered sixth."), said);
        assertFalse(Files.exists(folder.resolve("home")));
    }

    @Test
    void skipClosesIt() {
        assertTrue(room("present 1.1", "skip").contains("The lesson is closed; nothing of it was kept."));
    }

    @Test
    void theQuestionItselfGoesIntoAnotherKey() {
        String fixed = LESSON.replace("keys: same", "keys: D");
        String said = roomWith(fixed, "present 1.1 in D", "", "", "in A", "F A C", "A# D F", "");
        assertTrue(said.contains("Which chord is ♭VI in A major"), said);
        assertTrue(said.contains("Two answers, one right.\n"), said);
        assertTrue(said.contains("F A C:\nYes: F, which is F A C."), said);
        assertTrue(said.indexOf("A# D F:") > said.indexOf("F A C:"), said);
    }

    /** A chord that is typed between the questions is looked at in the key of the room. */
    @Test
    void musicIsReadInTheKeyOfTheRoom() {
        assertTrue(room("present 1.1 in D", "Bb").contains("In D major: ♭VI"));
        assertTrue(room("present 1.1 in D", "in A", "F").contains("In A major: ♭VI"));
    }

    @Test
    void itIsSaidOnceHowARoomIsLed() {
        String said = room("present 1.1 in D", "", "", "Bb D F", "", "");
        assertEquals(1, said.split("back goes back", -1).length - 1, said);
    }

    @Test
    void eachAnswerStaysWithWhoGaveIt() {
        String said = room("present 1.1 in D", "", "", "Ilse: B D F#", "Bo: Bb D F", "Jan: B D F#", "");
        assertTrue(said.contains("Noted for Ilse. Another answer, or Enter for the verdict."), said);
        assertTrue(said.contains("Three answers, one right.\n"), said);
        assertTrue(said.contains("B D F#, Ilse and Jan:\n"), said);
        assertTrue(said.contains("Bb D F, Bo:\nYes"), said);
    }

    @Test
    void whoCallsOutTooEarlyIsToldSo() {
        String said = room("present 1.1 in D", "Ilse: Bb D F");
        assertTrue(said.contains("Nothing is asked just now; Enter goes on."), said);
    }

    @Test
    void namesGoIntoNoHistory() throws IOException {
        Path home = folder.resolve("home");
        try (Typist typist = new Typist(80, 24, home)) {
            typist.types("present 5.3 in D");
            typist.types("Ilse: C");
            typist.types("play F C G");
        }
        assertEquals("C", lastWord(Files.readAllLines(home.resolve("history")).get(1)));
    }

    private static String lastWord(String line) {
        return line.substring(line.indexOf(':') + 1);
    }

    @Test
    void namesGoIntoNoNotebook() throws IOException {
        Path file = folder.resolve("thursday.md");
        room("present 1.1 in D", "", "", "Ilse: B D F#", "", "save " + file);
        String saved = Files.readString(file);
        assertTrue(saved.contains("B D F#:"), saved);
        assertFalse(saved.contains("Ilse"), saved);
    }

    @Test
    void titleAndKeyStandAboveEachStep() {
        String said = room("present 1.1 in D", "", "");
        assertEquals(3, said.split("The lowered sixth  in D major", -1).length - 1, said);
    }

    private String roomWith(String lesson, String... lines) {
        try {
            Files.writeString(folder.resolve("lessons/1-colours/1-the-lowered-sixth.md"), lesson);
        } catch (IOException full) {
            throw new AssertionError(full);
        }
        return room(lines);
    }
}
