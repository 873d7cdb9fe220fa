package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import monochord.Thorough;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.Settings;
import monochord.shell.trust.Trusted;
import monochord.shell.verb.Verbs;
import monochord.view.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cells as they are typed: at the prompt, through a pipe, on the command line, and in a lesson. */
class CellTypedTest {
    private static final String LEFT = "The cell is left: it was not complete. To run it, type it again with its end.";
    private static final String LESSON = """
            ---
            title: Numbers from a machine
            grade: 5
            needs: []
            skills: []
            ---

            Before.

            ```code
            var tune = progression("F C")
            play(tune)
            ```

            Between.

            ```code
            tune.chords().size() + 40
            ```

            After.
            """;

    @TempDir
    private Path home;

    /** Guard: the INT handler of {@code Prompt}; without it ctrl-C would end the line or do nothing. */
    @Test
    void aCellGoesOverSeveralLinesAndIsLeftOrStopped() throws Exception {
        try (Typist typist = new Typist(80, 24, home)) {
            typist.press("int twice(int n) {\r    return 2 * n;\r}\rtwice(21)\r");
            assertEquals(
                    List.of("", "", "twice(int) is known from now on.", "42"),
                    List.of(typist.answer(), typist.answer(), typist.answer(), typist.answer()));
            typist.sees("▹     return 2 * n;");

            typist.press("for (;;) {\r\r\r");
            assertEquals(List.of("", "", LEFT), List.of(typist.answer(), typist.answer(), typist.answer()));

            typist.press("int more() {\r");
            assertEquals("", typist.answer());
            typist.seesTheCellGoOn();
            typist.pressOn(Typist.CTRL_C);
            assertEquals(LEFT, typist.answer());

            Path running = home.resolve("running");
            typist.press(
                    "java.nio.file.Files.createFile(java.nio.file.Path.of(\"" + running + "\")); while (true) { }\r");
            while (!Files.exists(running)) {
                Thread.sleep(10);
            }
            typist.pressOn(Typist.CTRL_C);
            assertTrue(typist.answer().endsWith("Stopped."));
            assertEquals("42", typist.types("twice(21)"));
            typist.completes("twi", "twice(");
        }
    }

    private static Run piped(String lines, String... arguments) {
        return new Run.Outside().typing(lines).run(arguments);
    }

    @Thorough.Only
    @Test
    void aCellGoesOverSeveralLinesOfAPipe() {
        Run run = piped("int twice(int n) {\n  return 2 * n;\n}\ntwice(21)\nfor (;;) {\n\n\n1 + 1\nif (true) {\n");
        assertEquals("twice(int) is known from now on.\n42\n2\n", run.out());
        assertEquals((LEFT + "\n" + LEFT + "\n").replace(". To", ".\nTo"), run.err());
        assertEquals(0, run.status());
    }

    @Test
    void aPipeAnswersACellInOneObject() {
        Run run = piped(
                "int twice(int n) {\n  return 2 * n;\n}\nSystem.out.print(twice(21)); chord(\"Ab\")\nchrod(\"C\")\n1 / 0\n",
                "--json");
        assertEquals("""
                {"kind":"cell","value":null,"type":null,"output":""}
                {"kind":"cell","value":"Ab","type":"Chord","output":"42"}
                {"kind":"cell","value":null,"type":null,"output":"","error":"There is no chrod() here. Did you mean chord?","at":1}
                {"kind":"cell","value":null,"type":null,"output":"","error":"Nothing can be divided by 0.","at":1}
                """, run.out());
    }

    /** On the command line a line is all there is, and what is missing is missing. */
    @Test
    void aCellStandsOnTheCommandLine() {
        assertEquals(
                "{\"kind\":\"cell\",\"value\":\"42\",\"type\":\"int\",\"output\":\"\"}\n",
                Run.of("--json", "6 * 7").result(0));
    }

    @Thorough.Only
    @Test
    void aCellOnTheCommandLineGoesOverOneLine() {
        assertEquals(
                "A bracket } is missing at the end.\n  int twice(int n) {\n                    ^\n",
                new Run.Outside().run("int twice(int n) {").message(2));
    }

    /** Guard: {@code Surroundings.cellLimit}; ten seconds where nothing fit is set. */
    @ParameterizedTest(name = "cell-seconds={0}")
    @CsvSource({"1, 1", "42, 42", "999, 999", "0, 0", "00, 10", "1000, 10", "-3, 10", "1.5, 10", "ten, 10"})
    void howLongACellMayTakeIsASetting(String set, int seconds) throws IOException {
        assertEquals(Duration.ofSeconds(10), Surroundings.cellLimit(Settings.in(home)));
        Files.writeString(home.resolve("settings.properties"), "cell-seconds=" + set + "\n");
        assertEquals(Duration.ofSeconds(seconds), Surroundings.cellLimit(Settings.in(home)));
    }

    /** Guard: the supplier in {@code Surroundings.sitting}. */
    @Thorough.Only
    @Test
    void theSettingHoldsForTheCellsOfASitting() throws IOException {
        Files.writeString(home.resolve("settings.properties"), "cell-seconds=1\n");
        Run run = new Run.Outside()
                .atHome(home)
                .typing("while (true) { }\n1 + 1\n")
                .run();
        assertEquals("Stopped, for it took longer than a cell may take. That is 1 second.\n", run.err());
        assertEquals("2\n", run.out());
        Files.writeString(home.resolve("settings.properties"), "cell-seconds=0\n");
        Run none = new Run.Outside().atHome(home).typing("1 + 1\nshow C\n").run();
        assertEquals(
                "Java cannot be run here: by the settings a cell may take no time, cell-seconds=0.\n",
                none.err().replaceAll("\n(?=.)", " "));
        assertTrue(none.out().startsWith("C  C E G"), none.out());
    }

    private Path lesson() throws IOException {
        Path file = home.resolve("lessons").resolve("20-evenings").resolve("1-numbers-from-a-machine.md");
        Files.createDirectories(file.getParent());
        return Files.writeString(file, LESSON);
    }

    private List<String> walks(String lines) {
        return new Run.Outside()
                .atHome(home)
                .typing("learn 20.1 in D\n" + lines)
                .run()
                .lines();
    }

    private static boolean says(List<String> said, String line) {
        return said.stream().anyMatch(text -> text.contains(line));
    }

    /** A lesson's Java of several lines; guard: {@code FOLLOWS} in {@code Piece}. */
    @Thorough.Only
    @Test
    void linesRunOneByOneAndAChainAndAnElseInOnePiece() throws IOException {
        Path file = lesson();
        Files.writeString(file, LESSON.replace("""
                var tune = progression("F C")
                play(tune)
                """, """
                var tune = progression("F C")
                    .in(key("G"))
                if (tune.chords().size() == 3) System.out.println("three");
                else System.out.println("not three");
                """));
        List<String> said = walks("yes\n\nquit\n");
        assertTrue(says(said, "In G major"), said.toString());
        assertTrue(says(said, "not three"), said.toString());
    }

    /** Ours is trusted by the folder it lies in; guard: {@code waiting} in {@code LessonCode}. */
    @Test
    void ourOwnJavaRunsAtEnterAndIsPassedBy() throws IOException {
        lesson();
        Sitting sitting =
                new Run.Outside().atHome(home).around(null, null, null).sitting();
        sitting.outside().take(new Trusted(home, List.of(home.resolve("lessons"))));
        LineReading reading = new LineReading(new Verbs(), sitting);
        try {
            assertTrue(says(reading, "learn 20.1 in D").endsWith("Enter runs it, skip passes it by."));
            String ran = says(reading, "");
            assertTrue(ran.contains("Playing F C in D major at 84."), ran);
            assertTrue(ran.endsWith("tune.chords().size() + 40\n\nEnter runs it, skip passes it by."), ran);
            String skipped = says(reading, "skip");
            assertTrue(skipped.startsWith("After."), skipped);
        } finally {
            sitting.cells().close();
        }
    }

    private static String says(LineReading reading, String line) {
        return reading.read(line).text(Look.ofPipe()).plain().strip();
    }

    /** Guards: {@code LessonCode.show} asks {@code Trust}; {@code Outside.takeConsent} takes the question away again. */
    @Thorough.Only
    @Test
    void somebodyElsesJavaRunsAfterAYesAndIsRememberedByItsContent() throws IOException {
        Path file = lesson();
        List<String> passed = walks("\n\nyes\n\n\n\nquit\n");
        assertTrue(says(passed, "This lesson is not one of ours. yes runs its Java"), passed.toString());
        assertTrue(!says(passed, "Playing F C"), passed.toString());
        assertTrue(!says(passed, "42") && !says(passed, "no tune here"), passed.toString());

        List<String> agreed = walks("yes\n\n\n\n\nquit\n");
        assertTrue(says(agreed, "Playing F C"), agreed.toString());
        assertTrue(says(agreed, "42"), agreed.toString());

        List<String> again = walks("\n\n\n\n\nquit\n");
        assertTrue(says(again, "Enter runs it, skip passes it by."), again.toString());
        assertTrue(says(again, "42"), again.toString());

        Files.writeString(file, LESSON.replace("+ 40", "+ 41"));
        List<String> changed = walks("\n\n\n\n\nquit\n");
        assertTrue(says(changed, "This lesson is not one of ours."), changed.toString());
        assertTrue(!says(changed, "43"), changed.toString());
    }
}
