package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * While a notebook is typed again nothing outside is written or read, whatever stands in it.
 *
 * <p>Source of the attack classes: OWASP, "Path Traversal" and "Denial of Service Cheat Sheet", titles from memory.
 */
class SealedReplayTest {
    private static final String SECRET = "the band's bank account";

    @TempDir
    private Path base;

    private NotebookDesk desk;
    private Map<String, String> before;

    @BeforeEach
    void somebodyWithAPast() throws IOException {
        desk = NotebookDesk.in(base);
        desk.types("notes english", "tempo 100", "ask triad-spelling of C", "C E G");
        Files.writeString(desk.home().resolve("history"), "0:show C\n");
        Files.writeString(base.resolve("secret.md"), "# " + SECRET + "\n\n" + NotebookDesk.notebook(SECRET));
        desk.write("secret.md", "# " + SECRET + "\n");
    }

    private Run replay(String... typed) throws IOException {
        desk.write("odd.md", NotebookDesk.notebook(typed).replace("BASE", base.toString()));
        before = NotebookDesk.all(base);
        Run run = desk.says("replay odd.md");
        assertFalse(run.out().contains(SECRET), run.out());
        return run;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "play C --wav out.wav",
                "play C --wav ../out.wav",
                "play C --midi BASE/out.mid",
                "hear interval --wav ../desk/out.wav",
                "compare C vs D --wav BASE/out.wav",
                "save ../desk/evening",
                "save BASE/evening",
                "save secret --over",
                "save ../secret --over",
                "open secret",
                "open ../secret",
                "open ../desk/secret.md",
                "open BASE/secret.md --trust",
                "open draft",
                "replay ../secret.md --accept",
                "replay secret.md BASE/secret.md --accept --trust",
                "replay odd.md",
                "replay BASE/desk/odd.md",
                "publish BASE/secret.md --html BASE/out.html",
                "publish odd.md --html ../out.html",
                "check BASE/secret.md",
                "check ../secret.md secret.md --trust",
                "fit --file BASE/secret.md",
                "recolour --file ../secret.md",
                "bank BASE/secret.md",
                "bank own",
                "tempo 50",
                "patch 20",
                "notes latin",
                "keys",
                "keys 1",
                "keys off",
                "review",
                "progress",
                "quit",
                "note " + "x",
                "learn ../../secret",
                "learn BASE/secret.md",
                "present ../secret",
                "var f = new java.io.File(\"BASE/out\").createNewFile()",
                "play $f --wav BASE/out.wav"
            })
    void nothingOutsideIsTouched(String line) throws IOException {
        replay("show C", line, "show D");

        assertEquals(before, NotebookDesk.all(base));
        assertEquals("C  C E G\n", desk.says("show C").out().lines().findFirst().orElse("") + "\n");
    }

    @Test
    void anAnswerInItIsNoAnswerOfTheLearners() throws IOException {
        String progress = desk.types("progress").out();
        replay("ask triad-spelling of D", "D F# A", "practise triad-spelling", "C E G");

        assertEquals(before, NotebookDesk.all(base));
        assertEquals(progress, desk.types("progress").out());
    }

    /** What is written there is there for the lines behind it, and goes with it. */
    @Test
    void theEmptyFolderIsGoneAfterwards() throws IOException {
        String mark = "sealed-" + ProcessHandle.current().pid();
        Run run = replay("show C", "play C --wav " + mark + ".wav", "save " + mark, "replay " + mark, "open " + mark);

        assertTrue(run.out().contains("+ Saved: " + mark + ".md, 2 lines."), run.out());
        assertTrue(run.out().contains("+ " + mark + ".md: holds, 2 lines."), run.out());
        assertEquals(before, NotebookDesk.all(base));
        try (Stream<Path> left = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            assertTrue(left.filter(folder -> folder.getFileName().toString().startsWith("monochord"))
                    .noneMatch(folder -> Files.exists(folder.resolve(mark + ".md"))));
        }
    }

    @Test
    void whoSaysQuitInItEndsOnlyIt() throws IOException {
        desk.write("odd.md", NotebookDesk.notebook("quit", "show C"));
        Run run = desk.types("replay odd.md", "show Ab");

        assertTrue(run.out().contains("The sitting has ended before this line."), run.out());
        assertTrue(run.out().contains("A♭  A♭ C E♭"), run.out());
    }

    /** A replay of Java that does not end can be left, all of it at once. */
    @Test
    void ctrlCStopsAReplay() throws IOException {
        String[] loops = Stream.generate(() -> "while (true) {}").limit(20).toArray(String[]::new);
        Files.writeString(desk.home().resolve("loops.md"), NotebookDesk.notebook(loops));
        try (Typist typist = new Typist(80, 24, desk.home())) {
            typist.press("replay loops.md --trust" + Typist.ENTER);
            assertEquals("Stopped; what was typed again changes nothing.", typist.answerTo(Typist.CTRL_C));
        }
    }
}
