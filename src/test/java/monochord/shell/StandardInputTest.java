package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;
import monochord.view.StrictJson;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences on standard input, a sitting through a pipe, and lines that mean harm. */
@Tag("attack")
class StandardInputTest {
    @Test
    void aHyphenReadsASentenceALine() {
        Run run = new Run.Outside().typing("bVI\nxyz\n\nV7/V\n4").run("numeral", "-", "in", "Eb", "--json");
        assertEquals(2, run.status());
        assertEquals("", run.err());
        assertEquals(5, run.lines().size());
        assertEquals("Cb", field(run, 0, "symbol"));
        assertEquals(1L, field(run, 1, "at"));
        assertEquals(1L, field(run, 2, "at"));
        assertEquals("F7", field(run, 3, "symbol"));
        assertEquals("Ab", field(run, 4, "symbol"));
    }

    private static Object field(Run run, int line, String name) {
        return StrictJson.object(run.lines().get(line)).get(name);
    }

    @Test
    void aHyphenAloneReadsWholeLinesAndKeepsTheirOrder() {
        Run run = new Run.Outside()
                .typing("key D\r\nIV\r\nshow what\r\nC E G in F\r\n")
                .run("-", "--json");
        assertEquals(List.of(4, 2), List.of(run.lines().size(), run.status()));
        assertEquals("D major", field(run, 0, "key"));
        assertEquals("G", field(run, 1, "symbol"), "IV in the key that was settled");
        assertEquals(1L, field(run, 2, "at"));
        assertEquals("progression", field(run, 3, "kind"));
    }

    @Test
    void goodLinesGoOnAfterBadOnes() {
        Run run = new Run.Outside().typing("C E G\nH\nD F A\n").run("name", "-");
        assertTrue(run.out().startsWith("C E G is C"), run.out());
        assertTrue(run.out().contains("\nD F A is Dm"), run.out());
        assertTrue(run.err().startsWith("\"H\" is not a note name"), run.err());
        assertEquals(2, run.status());
    }

    @Test
    void anEmptyInputIsNoError() {
        assertEquals(new Run(0, "", ""), new Run.Outside().run("show", "-"));
        assertEquals(new Run(0, "", ""), new Run.Outside().run());
    }

    @ParameterizedTest
    @ValueSource(strings = {"C - F - G", "show C - F - G", "show IV - I"})
    void aHyphenBetweenChordsIsNotStandardInput(String sentence) {
        Run run = new Run.Outside().typing("nothing of this is read\n").run(sentence.split(" "));
        assertTrue(run.result(0).startsWith("In C major\n"), run.out());
    }

    @Test
    void aPipeWithoutAVerbIsAConversation() {
        Run run = new Run.Outside().typing("""
                key Eb
                ask degree-quality of 3
                major
                minor
                quit
                show C
                """).run();
        assertEquals("", run.err());
        assertEquals(0, run.status());
        assertTrue(run.out().startsWith("E♭ major: three flats, B♭, E♭ and A♭.\n"), run.out());
        assertTrue(run.out().endsWith("Until next time.\n"), "quit ends it: " + run.out());
        assertFalse(run.out().contains("\033"));
    }

    @Test
    void standardInputThatBreaksIsSaidSo() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the line went dead");
            }
        };
        for (String[] arguments : List.of(new String[0], new String[] {"show", "-"})) {
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
            int status = new CommandLine(new Run.Outside().around(broken, nowhere, new PrintStream(err, true)))
                    .run(arguments);
            assertEquals(3, status);
            assertEquals("Standard input cannot be read: the line went dead\n", err.toString());
        }
    }

    @Test
    void aLineOfAMegabyteIsRefusedAtOnce() {
        String line = "C ".repeat(1 << 19);
        Run run = new Run.Outside().typing(line + "\nshow D\n").run("-", "--json");
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"This line has 1048576 characters; at most 10000 are read.\",\"at\":10001}",
                run.lines().get(0));
        assertEquals("D", field(run, 1, "symbol"));
        assertEquals(2, new Run.Outside().run("show", line).status());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "show",
                "name",
                "numeral",
                "borrow",
                "after",
                "transpose",
                "play",
                "key",
                "learn",
                "ask",
                "help",
                "check",
                ""
            })
    void controlCharactersNeverReachTheTerminal(String verb) {
        String hostile = "C\0\33[31m\u009b2J\7\b\u202e\u2028\uD834x\tD";
        for (String option : List.of("--plain", "--ascii", "--json")) {
            Run run = new Run.Outside()
                    .run(verb.isEmpty() ? new String[] {hostile, option} : new String[] {verb, hostile, option});
            String shown = run.out() + run.err();
            assertTrue(shown.length() > 10, shown);
            assertTrue(
                    shown.chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)),
                    () -> verb + " shows " + shown);
            assertTrue(shown.chars().noneMatch(c -> c == 0x202E || c == 0x2028), () -> verb + " turns text round");
        }
    }

    @Test
    void bytesThatAreNoUtf8AreReadAsSomethingElse() {
        byte[] bytes = {'s', 'h', 'o', 'w', ' ', 'C', (byte) 0xC3, '\n', 's', 'h', 'o', 'w', ' ', 'D', '\n'};
        Run run = new Run.Outside().bytes(bytes).run("-", "--json");
        assertEquals(2, run.lines().size());
        assertEquals("D", field(run, 1, "symbol"));
    }
}
