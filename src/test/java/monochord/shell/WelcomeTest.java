package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first start: at most four questions, a place in the course, and nothing in anybody's way. */
class WelcomeTest {
    private static final String GREETING = "Good day. A few short questions find where you begin; Enter passes each."
            + " Music, a verb or help works at once."
            + " What do you call the notes: english A B C, german A H C, or latin La Si Do?";
    private static final String SCALE =
            "Can you name a major scale? Type its notes. Spell D major, from D. Question 2 of 4.";
    private static final String DEGREE =
            "Now a chord of that key. Which triad stands on the sixth degree of D major? Question 3 of 4.";
    private static final String CHORD = "One from farther on; Enter if it is new to you."
            + " Which chord is ♭VI in D major, the major chord on the lowered sixth? Question 4 of 4.";
    private static final String ELSEWHERE = "; lessons lists all, learn begins any.";

    @TempDir
    private Path home;

    private Typist newcomer() throws IOException {
        return Typist.newcomer(80, 24, home);
    }

    @Test
    @DisplayName("who presses nothing but Enter begins at the beginning")
    void beginsAtTheBeginning() throws IOException {
        try (Typist typist = newcomer()) {
            assertEquals(GREETING, typist.greeting());
            assertEquals(SCALE + " Enter passes it.", typist.types(""));
            assertEquals(
                    "Then we begin at the beginning, on the keys. Enter begins 1.1 Steps and half steps" + ELSEWHERE,
                    typist.types(""));
            assertTrue(typist.types("").startsWith("1.1 Steps and half steps in C major"));
        }
    }

    @Test
    @DisplayName("who has German names and the borrowed chord begins with borrowed colour, in those names")
    void beginsWithBorrowedColour() throws IOException {
        try (Typist typist = newcomer()) {
            String called = typist.types("german");
            assertEquals(
                    "Notes are called C D E F G A H C, with Fis and B among them; type them so, too."
                            + " English, German or Latin names: notes english, notes german, notes latin. " + SCALE
                            + " Enter passes it.",
                    called);
            assertEquals("Yes: D E Fis G A H Cis. " + DEGREE, typist.types("d e fis g a h cis"));
            assertTrue(typist.types("Hm").endsWith(CHORD));
            assertEquals(
                    "Yes: B, which is B D F. You can name a borrowed chord, so we begin with borrowed colour."
                            + " Enter begins 5.1 The house next door" + ELSEWHERE,
                    typist.types("B"));
        }
        try (Typist typist = newcomer()) {
            assertEquals("Good day. Enter begins the first lesson; or type music, a verb, or help.", typist.greeting());
            assertTrue(typist.types("show B").startsWith("B B D F In C major"));
        }
    }

    /**
     * What is typed after the names are passed, and the lesson that Enter begins then. Source: ours, see the decisions.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            no                                        | 1.1 Steps and half steps
            D E F G A B C, what, D E F G A B C        | 1.2 Seven letters, each once
            C E G, hint, tell                         | 1.1 Steps and half steps
            D E F# G A B C, D E F# G A B C#, ?        | 2.1 Stacking thirds
            D E F# G A B C#, skip                     | 2.1 Stacking thirds
            D E F# G A B C#, Bm, help, ''             | 3.1 What stays
            D E F# G A B C#, Bm, Bb                   | 5.1 The house next door
            D E F# G A B C#, Em, F#m                  | 2.1 Stacking thirds
            D E F# G A B C#, Bm, D, E                 | 3.1 What stays
            """)
    void findsAPlace(String lines, String lesson) throws IOException {
        try (Typist typist = newcomer()) {
            typist.types("");
            String said = "";
            for (String line : lines.split(", ?")) {
                said = typist.types(line.replace("''", ""));
            }
            assertTrue(said.endsWith(" Enter begins " + lesson + ELSEWHERE), said);
        }
    }

    @Test
    @DisplayName("a slip has a second try, and both are kept")
    void aSlipHasASecondTry() throws IOException {
        try (Typist typist = newcomer()) {
            typist.types("notes english");
            String said = typist.types("D E F# G A B C");
            assertTrue(said.endsWith(" Once more, or Enter leaves it."), said);
            assertTrue(typist.types("why").contains("one by one"));
            assertTrue(typist.types("D E F# G A B C#").endsWith(DEGREE));
            assertTrue(typist.types("progress").contains("scale-spelling"));
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"F C G", "key D", "show Abmaj7", "lessons", "learn 2.1"})
    @DisplayName("music and verbs work at once and end the questions")
    void nothingIsInTheWay(String line) throws IOException {
        try (Typist typist = newcomer()) {
            String said = typist.types(line);
            assertTrue(!said.contains("neither") && !said.contains("major scale?"), said);
            assertTrue(!typist.types("").contains("major scale?"));
        }
    }

    @Test
    @DisplayName("a verb ends them in the middle, too, and takes the question off the desk")
    void aVerbEndsThemInTheMiddle() throws IOException {
        try (Typist typist = newcomer()) {
            typist.types("");
            typist.types("key D");
            assertTrue(typist.types("F C G").startsWith("In D major"));
        }
    }

    @Test
    @DisplayName("a line that is nothing is refused, and the question stands")
    void whatIsNothingIsRefused() throws IOException {
        try (Typist typist = newcomer()) {
            assertEquals(
                    "\"qqq\" is neither music nor a word I know."
                            + " Type english, german or latin; Enter keeps A B C and goes on.",
                    typist.types("qqq"));
            assertTrue(typist.types("la si do").startsWith("Notes are called Do Re Mi"));
        }
    }

    @Test
    @DisplayName("a pipe is asked nothing")
    void aPipeIsAskedNothing() {
        String said = String.join(
                " ", new Run.Outside().atHome(home).typing("\nquit\n").run().lines());
        assertTrue(said.startsWith("1.1  Steps and half steps  in C major"), said);
    }

    @Test
    @DisplayName("a first evening is saved with the questions that opened it, and comes back the same")
    void aFirstEveningIsReplayed() throws IOException {
        try (Typist typist = newcomer()) {
            typist.types("");
            typist.types("D E F G");
            typist.types("");
            typist.types("show bVI");
            typist.types("save evening");
        }
        Run run = new Run.Outside().inFolder(home).atHome(home).run("replay", "evening.md");
        assertEquals("evening.md: holds, 5 lines.\n", run.result(0));
    }
}
