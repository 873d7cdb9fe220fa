package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Handouts and charts as pages. */
class SheetTest {
    @TempDir
    private Path folder;

    private Run run(String sentence) {
        return new Run.Outside().inFolder(folder).run(sentence.split(" "));
    }

    private String page() throws IOException {
        return Files.readString(folder.resolve("a.html"));
    }

    private static long count(String what, String page) {
        return Pattern.compile(Pattern.quote(what)).matcher(page).results().count();
    }

    /** In D, seven triads and seven seventh chords; each with a keyboard and a staff. */
    @Test
    void theChordsOfAKeyEachWithKeyboardStaffAndSource() throws IOException {
        assertEquals(
                "Chords in D major, written: a.html\n",
                run("sheet chords in D --html a.html").result(0));
        String page = page();
        long blocks = count("<section class=\"block\">", page);
        assertTrue(blocks > 20, () -> blocks + " blocks");
        assertEquals(blocks, count("class=\"keys\"", page));
        assertEquals(blocks, count("class=\"staff\"", page));
        assertTrue(page.contains("<h3>♭VI  B♭</h3><p>Notes: B♭ D F</p>"), page);
        assertTrue(page.contains("D minor"), page);
    }

    @Test
    void theScalesOnATonicWithFingers() throws IOException {
        assertEquals(
                "{\"kind\":\"sheet\",\"files\":[\"a.html\"],\"title\":\"Scales on E♭\"}\n",
                run("sheet scales in Eb --html a.html --json").result(0));
        String page = page();
        assertTrue(
                page.contains("<h3>E♭ major</h3><p>Notes: E♭ F G A♭ B♭ C D</p>"
                        + "<p>Half steps from note to note: 2 2 1 2 2 2 1</p><p>Signature: 3 flats</p>"
                        + "<p>Right hand: 3 1 2 3 4 1 2 3</p><p>Left hand: 3 2 1 4 3 2 1 3</p>"),
                page);
        assertEquals(2, count("Right hand:", page));
        assertTrue(page.contains("If a hand aches, stop"), page);
    }

    @Test
    void aChartForSeveralPlayersOnOnePage() throws IOException {
        run("chart F | C G7/B | Ab . . Fm6 | % | in C for concert, trumpet --html a.html")
                .result(0);
        String page = page();
        assertTrue(page.contains("<h2>For trumpet, written in D major</h2>"), page);
        assertTrue(page.contains("<div class=\"share\">G<span class=\"quiet\">IV</span></div>"), page);
        assertTrue(page.contains("<div class=\"share\">B♭<span class=\"quiet\">♭VI</span></div>"), page);
        assertEquals(8, count("<div class=\"bar\">", page));
    }

    @Test
    void whatIsThereStays() throws IOException {
        Files.writeString(folder.resolve("a.html"), "mine");
        assertEquals(
                "a.html is there already, and nothing was written; --over puts this in its place.\n",
                run("sheet chords in D --html a.html").message(3));
        assertEquals("mine", page());
        run("sheet chords in D --html a.html --over").result(0);
    }

    @Test
    void refusalsSayWhatWouldWork() {
        String form = """
                Form: sheet chords or scales, or voicings PROGRESSION, or questions SKILL, or
                LESSON or FILE [as CODE] [in KEYS] [count NUMBER] [copies NUMBER] [lines, staves
                or keyboards] [letter] [--html OUT] [--pdf OUT] [--svg OUT] [--over]
                """;
        assertEquals(
                "\"tunes\" is not a handout: expected chords, scales, voicings, questions or a\n"
                        + "lesson. Example: sheet chords in D --pdf chords.pdf\n" + form,
                run("sheet tunes --html a.html").message(2));
        assertEquals(
                "\"chords\" is not a handout: it has to be said where it goes. Example: sheet\nchords in D --pdf chords.pdf\n"
                        + form,
                run("sheet chords").message(2));
    }

    /** The same seed gives the same sheet; the key has every answer and bears the same code. */
    @Test
    void aWorksheetAndItsKey() throws IOException {
        assertEquals(
                "Spelling triads, written: a.html, a-key.html\n",
                run("sheet questions triad-spelling in flats count 8 --html a.html --seed 7")
                        .result(0));
        String sheet = page();
        String key = Files.readString(folder.resolve("a-key.html"));
        assertEquals(8, count("class=\"ruled\"", sheet));
        assertEquals(8, count("Answer: ", key));
        Matcher code = Pattern.compile("Sheet ([A-Z2-9]{5})<").matcher(sheet);
        assertTrue(code.find(), sheet);
        assertTrue(key.contains("Key to sheet " + code.group(1)), key);
        run("sheet questions triad-spelling in flats count 8 --html b.html --seed 7")
                .result(0);
        assertEquals(sheet, Files.readString(folder.resolve("b.html")));
    }

    @Test
    void copiesAskEachPupilSomethingElse() throws IOException {
        run("sheet questions triad-spelling in C F copies 3 --html a.html --seed 7")
                .result(0);
        List<String> codes = Pattern.compile("Sheet ([A-Z2-9]{5})<")
                .matcher(page())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .toList();
        assertEquals(3, codes.size(), codes::toString);
    }

    @Test
    void whatIsHeardIsNotAskedOnPaper() {
        String message = run("sheet questions ear-interval in C --pdf a.pdf").message(2);
        assertTrue(
                message.startsWith(
                        "\"ear-interval\" is not a skill to ask on paper: it is asked by ear, and paper has\n"
                                + "no sound. Example: sheet questions triad-spelling in flats count 12 --pdf\ntriads.pdf\n"),
                message);
        assertTrue(run("sheet questions juggling --pdf a.pdf")
                .message(2)
                .startsWith("\"juggling\" is not a skill to ask on paper: skills lists what can be asked."));
        assertTrue(run("sheet questions triad-spelling count 0 --pdf a.pdf")
                .message(2)
                .startsWith("\"0\" is not a number: expected a whole number from 1 to 60."));
    }

    @Test
    void theHandsOfAProgressionAndALesson() throws IOException {
        assertEquals(
                "F A♭maj7 C in C major, written: a.html\n",
                run("sheet voicings F Abmaj7 C in C --html a.html").result(0));
        assertEquals(3, count("class=\"keys\"", page()));
        assertEquals(1, count("class=\"staff\"", page()));
    }
}
