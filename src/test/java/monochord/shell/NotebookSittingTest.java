package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.notebook.NotebookReader;
import monochord.view.StrictJson;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A sitting is saved, opened, gone on with and replayed. */
class NotebookSittingTest {
    @TempDir
    private Path base;

    private NotebookDesk desk;

    @BeforeEach
    void setUp() throws IOException {
        desk = NotebookDesk.in(base);
    }

    private static String oneLine(String wrapped) {
        return wrapped.replaceAll("\\s+", " ").strip();
    }

    /** What somebody may do in an evening, kind by kind. */
    static Stream<Arguments> sittings() {
        return Stream.of(
                Arguments.of(
                        "music and words",
                        List.of("key D", "show bVI", "4 1 5 b6", "note The *last* chorus.", "borrow")),
                Arguments.of(
                        "a question and what helps",
                        List.of("ask borrowed-chord of bVI in A", "F# A C#", "hint", "why", "F A C", "")),
                Arguments.of("a lesson taken", List.of("learn 1.1", "", "", "", "C", "tell", "", "skip", "")),
                Arguments.of(
                        "practice", List.of("practise triad-spelling", "C E G", "tell", "", "hint", "skip", "quit")),
                Arguments.of("by ear", List.of("hear interval", "P5", "hint", "tell", "ask ear-quality", "maj", "why")),
                Arguments.of(
                        "without a sound card",
                        List.of("play 4 1 5 b6 at 84", "compare F C G vs F C Gm", "play C --wav c.wav", "stop")),
                Arguments.of("a file that cannot be written", List.of("play C --wav nowhere/c.wav", "bank gone.sf2")),
                Arguments.of(
                        "note names of another country",
                        List.of("notes german", "show H7", "ask triad-spelling of Es", "Es G B")),
                Arguments.of(
                        "what cannot be read",
                        List.of("shwo C", "show Qx", "", "   ", "F C Xyz", "help", "check gone.md")),
                Arguments.of("a class", List.of("present 2.1", "1", "next", "", "quit")),
                Arguments.of("what hangs on the machine", List.of("show C", "keys", "keys off", "show D")));
    }

    /** Thoroughly, for {@link #whoOpensGoesOnWhereItEnded} saves and replays, too. */
    @Thorough.Only
    @ParameterizedTest(name = "{0}")
    @MethodSource("sittings")
    void whatIsSavedIsAnsweredTheSameAgain(String what, List<String> lines) throws IOException {
        List<String> typed = new ArrayList<>(lines);
        typed.remove("quit");
        typed.add("save evening");
        desk.types(typed.toArray(String[]::new));

        assertEquals(
                List.of(),
                NotebookReader.read(desk.folder().resolve("evening.md")).faults());
        desk.holds("evening.md");
    }

    /** The same with Java, which takes a JVM for each run; a sitting with some is saved and replayed by another test, too. */
    @Thorough.Only
    @Test
    void whoOpensJavaGoesOnWhereItEnded() throws IOException {
        whoOpensGoesOnWhereItEnded(
                "Java",
                List.of(
                        "var verse = \"F C G Ab\"",
                        "for (int i = 0; i < 2; i++) {",
                        "    System.out.println(i);",
                        "}",
                        "play $verse in D",
                        "key(\"D\")",
                        "1 / 0",
                        "int x = \"\";"));
    }

    /** Typed in one go, or saved in the middle and gone on with in another run. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("sittings")
    void whoOpensGoesOnWhereItEnded(String what, List<String> lines) throws IOException {
        List<String> typed = new ArrayList<>(lines);
        typed.remove("quit");
        int half = typed.size() / 2;
        while (half < typed.size() && typed.get(half).matches("(    .*|}).*")) {
            half++;
        }
        List<String> whole = new ArrayList<>(typed);
        whole.add("save whole");
        desk.types(whole.toArray(String[]::new));
        NotebookDesk desk = NotebookDesk.in(Files.createDirectory(base.resolve("another day"))); // with no record yet
        List<String> first = new ArrayList<>(typed.subList(0, half));
        first.add("save halves");
        desk.types(first.toArray(String[]::new));
        List<String> second = new ArrayList<>(List.of("open halves"));
        second.addAll(typed.subList(half, typed.size()));
        second.add("save");
        Run run = desk.types(second.toArray(String[]::new));

        assertEquals(this.desk.read("whole.md"), desk.read("halves.md"), run.out() + run.err());
        desk.holds("halves.md");
    }

    @Test
    void whatWasSavedIsSaid() throws IOException {
        Run run = desk.types("show C", "note One.", "note Two.", "save evening", "save", "save evening.md");

        assertTrue(oneLine(run.out()).contains("evening.md"), run.out());
        assertEquals("", run.err());
        assertTrue(desk.read("evening.md").endsWith("```\n\nOne.\n\nTwo.\n"), desk.read("evening.md"));
    }

    @Test
    void aNoteHoldsNoHtmlAndNoFenceAndMayNotBeTooLong() throws IOException {
        Run run = desk.types(
                "note ```console",
                "note ~~~",
                "note <script>alert(1)</script>",
                "note " + "<a".repeat(900),
                "note",
                "save n");

        assertEquals(
                List.of(), NotebookReader.read(desk.folder().resolve("n.md")).faults());
        assertEquals(
                0,
                NotebookReader.read(desk.folder().resolve("n.md"))
                                .notebook()
                                .orElseThrow()
                                .exchanges()
                                .size()
                        - 2);
        assertTrue(oneLine(run.err()).contains("it has more than 1900 characters"), run.err());
        assertTrue(desk.read("n.md").contains("\n\\<script>alert(1)\\</script>\n"), desk.read("n.md"));
    }

    @Test
    void aForeignFileIsNotWrittenOver() throws IOException {
        desk.write("mine.md", "my shopping");
        Run run = desk.types("show C", "save mine");

        assertEquals(
                "mine.md is there already, and nothing was written; --over puts this in its place.",
                oneLine(run.err()));
        assertEquals("my shopping", desk.read("mine.md"));
        desk.types("show C", "save mine --over");
        desk.holds("mine.md");
    }

    /** Not even its own notebook, once somebody else has changed it. */
    @Test
    void whatSomebodyChangedMeanwhileIsNotWrittenOver() throws IOException {
        desk.types("show C", "save evening");
        String before = desk.read("evening.md");
        desk.write("evening.md", before + "\nby hand\n");
        Run run = desk.types("show D", "save evening.md");

        assertTrue(run.err().contains("is there already"), run.err());
        assertEquals(before + "\nby hand\n", desk.read("evening.md"));
    }

    @Test
    void itIsSavedWholeOrNotAtAll() throws IOException {
        Files.createDirectory(desk.folder().resolve("folder.md"));
        Run run = desk.types("show C", "save gone/evening", "save folder.md", "save", "save \0");

        assertEquals(
                List.of("folder.md"),
                List.copyOf(NotebookDesk.all(desk.folder()).keySet()).subList(1, 2));
        assertTrue(run.err().contains("there is no folder"), run.err());
        assertTrue(run.err().contains("is a folder, not a file"), run.err());
        assertTrue(oneLine(run.err()).contains("a name is needed"), run.err());
        assertEquals(
                "Nothing has been typed or noted yet.\n",
                desk.types("save evening").out());
    }

    @Test
    void whatCannotBeOpenedIsSaidAndTheLineGoesOn() throws IOException {
        desk.write("odd.md", "```console\nx\n```\n");
        Run run = desk.types("open gone", "open odd", "open", "open draft", "show Ab");

        assertTrue(run.out().contains("odd.md:2:1: nothing was typed above this line")
                || run.err().contains("odd.md:2:1"));
        assertTrue((run.out() + run.err()).contains("gone.md:1:1: there is no such file"), run.err());
        assertTrue(run.err().contains("There is no draft that was not saved."), run.err());
        assertTrue(run.out().contains("A♭"), run.out());
    }

    @Test
    void eachDifferenceIsToldWithItsLine() throws IOException {
        desk.types("show C", "4 1 5", "show G7", "save evening");
        String right = desk.read("evening.md");
        desk.write("evening.md", right.replace("C  C E G", "C  C E♭ G").replace("G7  G B D F", "G7\nlost"));

        Run run = desk.says("replay evening.md");
        assertEquals(1, run.status());
        String place = "evening.md:" + (right.lines().toList().indexOf("▸ show C") + 1) + ": show C\n";
        assertTrue(run.out().startsWith("evening.md: 2 of 3 lines answered otherwise.\n" + place), run.out());
        assertTrue(run.out().contains("  - C  C E♭ G\n  + C  C E G\n"), run.out());
        assertFalse(run.out().contains("4 1 5"), run.out());
    }

    @Test
    void whatIsAcceptedHoldsFromThenOn() throws IOException {
        desk.write("evening.md", "Words.\n\n" + NotebookDesk.notebook("show C", "key D", "show bVI"));

        Run run = desk.says("replay evening.md --accept");
        assertEquals(0, run.status(), run.out());
        assertTrue(run.out().startsWith("evening.md: 3 of 3 lines rewritten.\n"), run.out());
        assertEquals(
                "evening.md: holds, 3 lines.\n", desk.says("replay evening.md").result(0));
        assertTrue(desk.read("evening.md").startsWith("Words.\n\n# An evening\n\n```console\n▸ show C\nC  C E G"));
    }

    @Test
    void severalAreReplayedAndScriptsLearnWhatCameOfIt() throws IOException {
        desk.write("one.md", NotebookDesk.notebook("stop"));
        desk.write("a b.md", "nothing typed\n");
        desk.write("odd.md", "<b>\n");

        Run run = desk.says("replay one.md odd.md gone.md --json");
        assertEquals(3, run.status());
        Map<String, Object> said = StrictJson.object(run.out().strip());
        List<?> files = (List<?>) said.get("files");
        Map<?, ?> one = (Map<?, ?>) files.get(0);
        assertEquals(
                List.of("one.md", false, 1L, false),
                List.of(one.get("path"), one.get("holds"), one.get("lines"), one.get("accepted")));
        Map<?, ?> difference = (Map<?, ?>) ((List<?>) one.get("differences")).get(0);
        assertEquals(
                List.of(4L, "stop", ""),
                List.of(difference.get("line"), difference.get("typed"), difference.get("written")));
        assertEquals(1, ((List<?>) ((Map<?, ?>) files.get(1)).get("faults")).size());
        assertEquals("a b.md: holds, 0 lines.\n", desk.says("replay a b.md").result(0));
    }

    /** Also one that only holds because the teacher's own lessons are found. */
    @Test
    void aLessonOfOnesOwnIsFoundAgain() throws IOException {
        Path book = Files.createDirectories(desk.home().resolve("lessons").resolve("9-ours"));
        Files.writeString(
                book.resolve("1-thursday.md"),
                "---\ntitle: Thursday\ngrade: 1\nneeds: []\nskills: [borrowed-chord]\n---\n\n## One\n\nPlay it.\n\n"
                        + "```ask\nskill: borrowed-chord\nsubject: iv\nkeys: E\ncount: 1\n```\n");
        desk.types("learn thursday", "", "A C E", "save evening");

        assertTrue(desk.read("evening.md").contains("Play it."), desk.read("evening.md"));
        desk.holds("evening.md");
    }

    /** Somebody who goes by German names has settled that long ago. */
    @Test
    void theNamesOfNotesGoAlong() throws IOException {
        desk.types("notes german");
        desk.types("show H7", "B", "save evening");

        assertTrue(desk.read("evening.md").contains("notes: german\n"), desk.read("evening.md"));
        assertTrue(
                desk.read("evening.md").contains("▸ show H7\nH7  H D♯ F♯ A".replace("D♯ F♯", "Dis Fis")),
                desk.read("evening.md"));
        desk.holds("evening.md");
        Files.delete(desk.home().resolve("settings.properties"));
        Run run = desk.types("open evening", "show B");
        assertTrue(
                oneLine(run.out()).contains("Notes go by german names in it; notes english changes that."), run.out());
        assertTrue(run.out().contains("B  B D F"), run.out());
    }
}
