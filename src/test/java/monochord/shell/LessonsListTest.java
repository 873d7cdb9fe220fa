package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sixty lessons are more than a screen holds, so there it is the books that are listed. */
class LessonsListTest {
    @TempDir
    private Path home;

    @Test
    void onAScreenTheBooksAreListed() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            String said = typist.types("lessons");
            assertTrue(
                    said.startsWith("1 How scales are built 1.1 to 1.11 2 Chords on the degrees 2.1 to 2.11 "), said);
            assertTrue(
                    said.endsWith(" 7 Hearing the borrowed chord 7.1 to 7.5 lessons 1 lists those of book 1; learn 1.1"
                            + " begins one, learn 1.1 in D in a key of yours."),
                    said);
        }
    }

    @Test
    void andABookWhenItIsNamed() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            String said = typist.types("lessons 7");
            assertTrue(said.startsWith("Hearing the borrowed chord 7.1 Home and the notes next door 7.2 "), said);
            assertEquals(
                    "\"9\" is not a book: books go by number, and lessons alone lists them. Example: lessons 5"
                            + " Form: lessons [BOOK]",
                    typist.types("lessons 9"));
        }
    }

    @Test
    void aPipeListsThemAll() {
        assertEquals(70 + 7 + 1, new Run.Outside().run("lessons").lines().size());
        assertEquals(11 + 1 + 1, new Run.Outside().run("lessons", "1").lines().size());
    }

    @Test
    void practiceIsPractise() throws IOException {
        try (Typist typist = new Typist(80, 24, home)) {
            assertTrue(typist.types("practice interval in D").startsWith("Ten questions on interval"));
            assertTrue(typist.types("practise triad-spelling").contains(", 5 keys mixed; skip ends it."));
        }
    }
}
