package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sittings typed key by key into the real line reader, on screens of several sizes. */
class PromptTest {
    @TempDir
    Path home;

    private Typist typist() throws IOException {
        return new Typist(80, 24, home);
    }

    @ParameterizedTest(name = "{0} × {1}")
    @CsvSource({"80, 24", "40, 12", "20, 10", "200, 60"})
    void aQuestionGoesItsWholeWayOnEveryScreen(int columns, int rows) throws Exception {
        try (Typist typist = new Typist(columns, rows, home)) {
            assertTrue(typist.typesAndReads("ask borrowed-chord of bVI in D").startsWith("Which chord is"));
            typist.seesAtThePrompt("");
            assertTrue(typist.typesAndReads("Bb D F#").startsWith("Nearly."));
            assertTrue(typist.typesAndReads("why").contains("B♭"));
            assertTrue(typist.typesAndReads("mmm").startsWith("\"mmm\" is not a"));
            String first = typist.typesAndReads("hint");
            String second = typist.typesAndReads("hint");
            String third = typist.typesAndReads("hint");
            assertEquals(3, List.of(first, second, third).stream().distinct().count());
            assertEquals(third, typist.typesAndReads("hint"));
            assertTrue(typist.typesAndReads("tell").contains("B♭ D F"));
            typist.seesAtThePrompt("");
            assertTrue(typist.typesAndReads("").startsWith("Which chord is"));
            assertTrue(typist.types("quit").startsWith("Until next time."));
            typist.seesItEnd();
        }
    }

    @ParameterizedTest(name = "{0} × {1}")
    @CsvSource({"80, 24", "40, 12", "20, 10"})
    void aLessonIsWalkedByEnterAndTellAlone(int columns, int rows) throws IOException {
        try (Typist typist = new Typist(columns, rows, home)) {
            String page = typist.typesAndReads("learn 1.1 in Eb");
            assertTrue(page.startsWith("1.1 Steps and half steps in E♭ major"), page);
            for (int turns = 0; typist.sitting().teaching().isInLesson(); turns++) {
                assertTrue(turns < 300, "the lesson does not end");
                page = typist.typesAndReads("tell");
                page = page.startsWith("No question is open just now.") ? typist.typesAndReads("") : page;
            }
            assertTrue(typist.typesAndReads("").startsWith("1.2 Seven letters"), "Enter begins the next lesson");
        }
    }

    @Test
    void everyVerbsExamplesFitOnTheNarrowestScreen() throws IOException {
        try (Typist typist = new Typist(20, 10, home)) {
            for (String line : List.of(
                    "show Abmaj7",
                    "show E harmonic minor",
                    "show IV I V bVI V I in D",
                    "name C E G A",
                    "numeral bVI in D",
                    "borrow in D",
                    "transpose F C G from C to Eb",
                    "play F C G Ab",
                    "stop",
                    "lessons",
                    "help",
                    "help play",
                    "help ears",
                    "key Gb",
                    "xyz",
                    "show Hm",
                    "int x = 3;",
                    "check")) {
                assertFalse(typist.typesAndReads(line).isEmpty(), line);
                typist.seesAtThePrompt("");
            }
        }
    }

    @Test
    void arrowsBringBackWhatWasTyped() throws IOException {
        try (Typist typist = typist()) {
            typist.types("key Eb");
            typist.types("4 1 5 b6");
            typist.press(Typist.UP);
            typist.seesAtThePrompt("4 1 5 b6");
            typist.press(Typist.UP);
            typist.seesAtThePrompt("key Eb");
            typist.press(Typist.DOWN);
            typist.seesAtThePrompt("4 1 5 b6");
            typist.press(Typist.BACKSPACE + Typist.BACKSPACE + "5");
            typist.seesAtThePrompt("4 1 5 5");
            typist.press(Typist.LEFT + Typist.LEFT + "!");
            typist.seesAtThePrompt("4 1 5! 5");
        }
    }

    @Test
    void historyIsKeptFromSittingToSitting() throws Exception {
        try (Typist typist = typist()) {
            typist.types("show F#m7b5");
            typist.press(Typist.CTRL_D);
            typist.seesItEnd();
        }
        assertTrue(Files.readString(home.resolve("history")).contains("show F#m7b5"));
        try (Typist typist = typist()) {
            typist.press(Typist.UP);
            typist.seesAtThePrompt("show F#m7b5");
        }
    }

    @Test
    void tabCompletesVerbsKeysPatchesAndLessons() throws IOException {
        try (Typist typist = typist()) {
            typist.press("tran" + Typist.TAB);
            typist.seesAtThePrompt("transpose ");
            typist.press("F fr" + Typist.TAB);
            typist.seesAtThePrompt("transpose F from ");
            typist.press("c#m" + Typist.TAB);
            typist.seesAtThePrompt("transpose F from C#m ");
            typist.press(Typist.CTRL_C);
            typist.answer();
            typist.press("play C with vib" + Typist.TAB);
            typist.seesAtThePrompt("play C with Vibraphone ");
            typist.press(Typist.CTRL_C);
            typist.answer();
            typist.press("ask progression-n" + Typist.TAB);
            typist.seesAtThePrompt("ask progression-numbers ");
        }
    }

    @Test
    void tabShowsWhatThereIsAndTheLineStays() throws IOException {
        try (Typist typist = typist()) {
            typist.press("learn " + Typist.TAB);
            typist.sees("6.9");
            typist.press("2.4" + Typist.ENTER);
            String begun = typist.answer();
            assertTrue(begun.startsWith("2.4 Numerals and numbers"), begun + typist.screen());
        }
    }

    @Test
    void ctrlCStopsWhatPlaysAndGivesThePromptBack() throws IOException {
        try (Typist typist = typist()) {
            assertTrue(typist.types("play IV I V bVI V I in D at 84")
                    .startsWith("Playing G D A B♭ A D in D major at 84."));
            assertEquals(List.of("play"), typist.heard());
            typist.press("half a li" + Typist.CTRL_C);
            assertTrue(typist.answer().startsWith("Stopped."));
            assertEquals(List.of("stop"), typist.heard());
            typist.seesAtThePrompt("");
            assertEquals("Silence.", typist.types("stop"));
            assertTrue(typist.types("play").startsWith("Playing"));
            assertEquals(List.of("stop", "play"), typist.heard());
        }
    }

    @Test
    void ctrlDStopsWhatPlaysAndEnds() throws Exception {
        try (Typist typist = typist()) {
            typist.types("play C");
            typist.press(Typist.CTRL_D);
            typist.seesItEnd();
            assertEquals(List.of("play", "stop"), typist.heard());
        }
    }

    @Test
    void keysThatMeanNothingHereDoNoHarm() throws IOException {
        try (Typist typist = typist()) {
            typist.press("\33OP\33[15~\33[200~C\33[201~\24");
            typist.press(Typist.CTRL_C);
            typist.answer();
            String odd = typist.types("show C \"E \\ ! $HOME `x` !!");
            assertTrue(odd.startsWith("\""), odd);
            typist.seesAtThePrompt("");
            String big = typist.types("x".repeat(500));
            assertTrue(big.startsWith("\"xxx"), big);
            typist.seesAtThePrompt("");
        }
    }

    @Test
    void aHomeThatCannotBeMadeOnlyForgetsTheHistory() throws IOException {
        Path file = Files.writeString(home.resolve("file"), "x");
        try (Typist typist = new Typist(80, 24, file.resolve("below"))) {
            assertTrue(typist.types("C E G").startsWith("In C major"));
            typist.press(Typist.UP);
            typist.seesAtThePrompt("C E G");
        }
    }
}
