package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import monochord.Thorough;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Java in somebody else's file runs after a yes to its content and never before.
 *
 * <p>Source of the attack classes: OWASP Top 10:2021, "A03 Injection" and "A08 Software and Data Integrity Failures", titles
 * from memory.
 */
class ForeignJavaTest {
    private static final String LESSON =
            "---\ntitle: T\ngrade: 1\nneeds: []\nskills: [borrowed-chord]\n---\n\n## One\n\n"
                    + "Play it.\n\n```code\n%s\n```\n\n```ask\nskill: borrowed-chord\nsubject: iv\nkeys: E\ncount: 1\n```\n";

    @TempDir
    private Path base;

    private NotebookDesk desk;
    private Path marker;

    @BeforeEach
    void setUp() throws IOException {
        desk = NotebookDesk.in(base);
        marker = base.resolve("marker");
    }

    /** A cell that leaves a trace. */
    private String planted() {
        return "new java.io.File(\"" + marker + "\").createNewFile();";
    }

    private boolean ran() throws IOException {
        return Files.deleteIfExists(marker);
    }

    private static String oneLine(String wrapped) {
        return wrapped.replaceAll("\\s+", " ").strip();
    }

    @Thorough.Only
    @Test
    void thePlantedCellDoesLeaveATrace() throws IOException {
        desk.types(planted());
        assertTrue(ran());
    }

    @Test
    void nothingOfANotebookRunsUnasked() throws IOException {
        desk.write("odd.md", NotebookDesk.notebook("show C", planted(), "var f = new java.io.File(\"x\")", "show $f"));

        Run replay = desk.says("replay odd.md");
        assertEquals(1, replay.status());
        assertTrue(
                oneLine(replay.out())
                        .contains("odd.md: 3 lines of Java not run, at line 6. It is not ours; --trust runs it."),
                replay.out());
        desk.says("replay odd.md --accept");
        desk.says("check odd.md");
        desk.says("publish odd.md --html out.html");
        Run open = desk.types("open odd.md", "replay odd.md", "yes", "no", "show Ab");
        assertTrue(
                oneLine(open.out()).contains("It is not ours, and holds Java that was not run: new java.io.File"),
                open.out());
        assertTrue(open.out().contains("A♭"));
        assertFalse(ran());
        assertTrue(desk.read("odd.md").contains(planted() + "\n\n"), "nor is it rewritten");
    }

    @Test
    void nothingOfALessonIsTriedUnasked() throws IOException {
        desk.write("1-odd.md", LESSON.formatted(planted()));

        String said = oneLine(desk.says("check 1-odd.md").out());
        assertFalse(ran(), said);
        desk.says("check 1-odd.md --trust");
        assertTrue(ran());
        desk.says("check 1-odd.md");
        assertFalse(ran(), "that was once");
    }

    @Thorough.Only
    @Test
    void scriptsSayTrust() throws IOException {
        desk.write("odd.md", NotebookDesk.notebook(planted()));

        desk.says("replay odd.md --trust");
        assertTrue(ran());
        desk.says("replay odd.md");
        assertFalse(ran(), "a script's yes is for once");
    }

    /**
     * Guards, each enough: {@code ReplayVerb} and {@code PublishVerb} look for a seal; a sitting that is closed off has no
     * source of cells. For what is kept: {@code Trust.unmoved} in {@code Rehearsal}.
     */
    @Test
    void trustSaidInANotebookIsNobodys() throws IOException {
        String[] lines = {
            planted(), "save inner", "replay inner --trust", "publish inner --html p.html --trust", "open inner --trust"
        };
        desk.write("odd.md", NotebookDesk.notebook(lines));
        String said = desk.says("replay odd.md").out();
        desk.says("publish odd.md --html odd.html");
        desk.types("open odd.md");
        assertFalse(ran(), said);
        desk.says("replay odd.md");
        assertFalse(ran(), "nor later");
        assertFalse(Files.exists(desk.home().resolve("trusted")), "nor is it kept");
    }

    /** Trust in a notebook is none in the lesson that it takes. Guard: the seal in {@code LessonCode.consented}. */
    @Test
    void aYesInAReplayRunsNoLesson() throws IOException {
        Path book = Files.createDirectories(desk.home().resolve("lessons").resolve("20-evenings"));
        Files.writeString(book.resolve("1-odd.md"), LESSON.formatted(planted()));
        String[] lines = {"learn 20.1 in E", "yes"};
        desk.write("odd.md", NotebookDesk.notebook(lines));
        String said = desk.says("replay odd.md --trust").out();
        assertFalse(ran(), said);
        assertTrue(oneLine(said).contains("A lesson's Java that is not ours is not run in a replay."), said);
    }

    @Thorough.Only
    @Test
    void aYesIsForTheContentAsItIs() throws IOException {
        Path file = desk.write("odd.md", NotebookDesk.notebook(planted()));
        desk.types("open odd.md --trust");
        assertTrue(ran());
        Files.move(file, desk.folder().resolve("other.md"));
        desk.says("replay other.md");
        assertTrue(ran(), "a yes to open is remembered, whatever the file is called");
        desk.write("other.md", desk.read("other.md").replace("An evening", "An Evening"));
        desk.says("replay other.md");
        assertFalse(ran(), "a changed byte is another content");
    }

    @Thorough.Only
    @Test
    void ownJavaComesBackWithoutAQuestion() throws IOException {
        desk.types(planted(), "save mine");
        assertTrue(ran());
        desk.says("replay mine.md");
        assertTrue(ran());
        desk.types("open mine");
        assertTrue(ran());
    }

    /** Going on from somebody's notebook and saving it makes it nobody's own. */
    @Test
    void foreignJavaIsNotWashedBySaving() throws IOException {
        desk.write("odd.md", NotebookDesk.notebook(planted()));
        desk.types("open odd", "show C", "save", "save copy");
        assertFalse(ran());
        desk.says("replay odd.md");
        desk.says("replay copy.md");
        desk.types("open copy");
        assertFalse(ran());
    }

    /** At a terminal a person is asked, told what would run, and only yes is a yes. */
    @Test
    void aPersonIsAsked() throws IOException {
        Path home = desk.home();
        String unpackaged = "new Formatter(\"" + marker + "\");"; // the typist takes java. for a fault of ours
        String many = "\nint a = 1;".repeat(20);
        Files.writeString(
                home.resolve("odd.md"),
                NotebookDesk.notebook(unpackaged, "class A {" + many.replace("\n", "\n▹ ") + "\n▹ }"));
        try (Typist typist = new Typist(80, 40, home)) {
            String asked = typist.typesAndReads("open odd.md");
            assertTrue(asked.contains("new Formatter("), asked);
            assertTrue(asked.contains("… and 7 more lines: look at the file before you say yes."), asked);
            assertTrue(asked.contains("Type yes to trust this file, as it is, and run it."), asked);
            typist.types("show C");
            typist.types("yes");
            typist.typesAndReads("open odd.md");
            typist.types("");
            typist.types("yes");
            assertFalse(ran(), "only the next line can say yes");
            typist.typesAndReads("open odd.md");
            typist.types("YES");
            assertTrue(ran());
            assertFalse(typist.typesAndReads("open odd.md").contains("Type yes"));
            assertTrue(ran());
        }
    }

    @Test
    void aLinkFromOurFolderIsForeign() throws IOException {
        Path odd = desk.write("odd.md", NotebookDesk.notebook(planted()));
        Path link = Files.createSymbolicLink(
                Path.of("transcripts-demo", "link-" + ProcessHandle.current().pid() + ".tmp")
                        .toAbsolutePath(),
                odd);
        try {
            desk.says("replay " + link);
            assertFalse(ran());
        } finally {
            Files.delete(link);
        }
    }
}
