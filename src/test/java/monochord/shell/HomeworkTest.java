package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Practice is sent home, done, handed in and marked, each by the sentences for it. */
class HomeworkTest {
    private static final String OPEN =
            "assign borrowed-chord in E count 3 for 7b due 2026-12-10 tries 2 saying \"Play each first.\" --out hw.md --seed 3";
    private static final String TEST = "assign triad-spelling in E count 3 unaided later --out test.md --seed 3";

    @TempDir
    private Path folder;

    @TempDir
    private Path home;

    private Run.Outside outside;

    @BeforeEach
    void inTheFolder() {
        outside = new Run.Outside().inFolder(folder).atHome(home);
    }

    private Run says(String sentence) {
        return outside.run(sentence.split(" "));
    }

    private String types(String... lines) {
        Run run = outside.typing(String.join("\n", lines) + "\nquit\n").run();
        return run.out() + run.err();
    }

    private String read(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    @Test
    void assignSaysWhatWasMadeAndHowItIsUsed() throws IOException {
        assertEquals("""
                Borrowed chords: 3 questions, written to hw.md.
                A pupil takes it with learn hw.md as CODE, or writes under its questions; sheet
                hw.md --pdf sheet.pdf prints it.
                """, says(OPEN).result(0));
        assertTrue(read("hw.md").startsWith("---\nassignment: borrowed-chord-3\ntitle: Borrowed chords\nfor: 7b\n"));
        assertEquals("hw.md: no faults.\n", says("check hw.md").result(0));
        assertEquals(
                "hw.md is there already, and nothing was written; --over puts this in its place.\n",
                says(OPEN).message(3));
        assertEquals(
                """
                Spelling triads: 1 question, others for each pupil, written to each.md.
                A pupil takes it with learn each.md as CODE, or writes under its questions;
                sheet each.md as CODE --pdf sheet.pdf prints it.
                """,
                says("assign triad-spelling count 1 each --out each.md --seed 3")
                        .result(0));
        assertEquals(
                """
                Intervals by ear: 1 question, written to heard.md.
                A pupil takes it with learn heard.md as CODE. Some of it is asked by ear, which
                paper cannot do.
                """, says("assign ear-interval count 1 --out heard.md --seed 3").result(0));
    }

    @Test
    void assignAsJson() {
        String json = says(OPEN + " --json").result(0);
        assertTrue(
                json.startsWith(
                        "{\"kind\":\"assign\",\"file\":\"hw.md\",\"id\":\"borrowed-chord-3\",\"seed\":3,\"digest\":\""),
                json);
        assertTrue(json.contains("\"each\":false,\"questions\":[{\"skill\":\"borrowed-chord\",\"subject\":\""), json);
    }

    @Test
    void assignRefusesWhatCannotBeAsked() {
        assertTrue(says("assign")
                .message(2)
                .startsWith("\"\" is not an assignment: it has to be said where it goes. Example: assign\n"
                        + "triad-spelling in flats count 10 --out homework.md\nForm: assign SKILL"));
        assertTrue(says("assign juggling --out x.md")
                .err()
                .startsWith("\"juggling\" is not something to assign: expected skills, as skills lists them, a"));
        assertTrue(says("assign song chorus --out x.md").err().contains("no song is open, and no file is named"));
        assertTrue(says("assign scale-spelling due tomorrow --out x.md")
                .err()
                .startsWith("\"tomorrow\" is not a day: expected year, month and day. Example: due 2026-12-10"));
    }

    @Test
    void anAssignmentIsDoneLikeALesson() throws IOException {
        says(OPEN);
        String said = types("learn hw.md as 7B-01", "", "x", "G", "tell", "Am");
        assertTrue(said.contains("Borrowed chords, for 7b-01; what is answered goes to hw-7b-01.md."), said);
        assertTrue(said.contains("Play each first."), said);
        assertTrue(said.contains("The answers come with the marking.\n"), said);
        assertTrue(said.contains("Try again, or: hint, why.\n"), said);
        assertTrue(said.contains("Try again, or: hint.\n"), said);
        assertFalse(said.contains("That was the last question."), said);
        String again = types("learn hw.md as 7b-01", "", "", "", "");
        assertTrue(again.contains("1 question of 3 is answered already."), again);
        assertTrue(
                again.contains("That was the last question. 1 of 3 questions are answered.\n"
                        + "hw-7b-01.md is what you hand in: send it back.\n"),
                again);
        assertTrue(read("hw-7b-01.md").contains("\ncode: 7b-01\ngiven: 19"), read("hw-7b-01.md"));
    }

    @Test
    void aTestSaysNothingUntilItIsMarked() throws IOException {
        says(TEST);
        String said = types("learn test.md as 7b-02", "E G B", "hint", "why", "xyz", "E G# C", "E G B");
        assertTrue(said.contains("Noted.\n"), said);
        assertTrue(said.contains("This is to be done without hints.\n"), said);
        assertTrue(said.contains("The verdicts come with the marking.\n"), said);
        assertTrue(said.contains("Try again.\n"), said);
        assertFalse(said.contains("Yes:"), said);
        String marked = says("mark test-7b-02.md with test.md").out();
        assertEquals("""
                code    right  assignment        to know
                7b-02  1 of 3  triad-spelling-3
                """, marked.substring(0, marked.indexOf('\n', marked.indexOf("7b-02")) + 1));
    }

    @Test
    void whatStandsOnPaperIsTypedInAndMarked() throws IOException {
        says(TEST);
        String said = types("mark test.md as 7b-05", "E G B", "a scribble", "E G# B");
        assertTrue(said.contains("3 of 3 questions are answered.\n"), said);
        assertTrue(said.contains("7b-05  "), said);
        assertTrue(read("test-7b-05.md").contains("Answer: a scribble\n"));
        assertFalse(read("test-7b-05.md").contains("given:"));
    }

    @Test
    void markTellsEachAnswerAndEachFileToAProgram() throws IOException {
        says(TEST);
        Files.createDirectory(folder.resolve("in"));
        Files.writeString(
                folder.resolve("in/anna.md"),
                read("test.md").replace("code:", "code: 7b-01").replace("Answer:", "Answer: E G B"));
        List<String> lines = says("mark in with test.md --json").lines();
        assertEquals(4, lines.size());
        assertTrue(
                lines.get(0)
                        .startsWith(
                                "{\"kind\":\"answer\",\"assignment\":\"triad-spelling-3\",\"code\":\"7b-01\",\"item\":1,\"skill\":\"triad-spelling\","));
        assertTrue(
                lines.get(3)
                        .startsWith(
                                "{\"kind\":\"file\",\"file\":\"in/anna.md\",\"assignment\":\"triad-spelling-3\",\"code\":\"7b-01\",\"right\":1,\"of\":3,\"altered\":false,"));
        assertEquals(3, says("mark nowhere").status());
        assertEquals("nowhere: there is no such file\n", says("mark nowhere").message(3));
    }

    @Test
    void anotherFileInThePlaceOfWhatIsHandedInStays() throws IOException {
        says(OPEN);
        Files.writeString(folder.resolve("hw-7b-01.md"), "my diary\n");
        assertTrue(types("learn hw.md as 7b-01")
                .contains("hw-7b-01.md is there already and is something else; nothing was begun."));
        assertEquals("my diary\n", read("hw-7b-01.md"));
        assertTrue(says("learn hw.md").err().contains("by whom, with the\ncode your teacher gave you."));
    }

    /** Nobody's name, no path and no machine stands in what is given out or handed in, nor in its pages. */
    @Test
    void nothingTellsWhoOrWhere() throws IOException {
        says(OPEN);
        types("learn hw.md as 7b-01", "", "Am", "C", "D");
        says("sheet hw.md --pdf sheet.pdf --html sheet.html --svg sheet.svg");
        List<String> tells = new ArrayList<>(List.of(
                System.getProperty("user.name"), System.getProperty("user.home"), folder.toString(), home.toString()));
        tells.add(InetAddress.getLocalHost().getHostName());
        tells.removeIf(word -> word.length() < 3);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String bytes = text(file);
                tells.stream()
                        .filter(word -> !List.of("root", "user", "localhost").contains(word))
                        .forEach(word -> assertFalse(bytes.contains(word), file + " tells " + word));
            }
        }
        assertTrue(Files.exists(folder.resolve("sheet-key.pdf")));
    }

    /** Every byte, and of a PDF what it says about itself, uncompressed. */
    private static String text(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        String plain = new String(bytes, StandardCharsets.ISO_8859_1);
        if (!file.toString().endsWith(".pdf")) {
            return plain;
        }
        try (PDDocument document = Loader.loadPDF(bytes)) {
            return plain
                    + document.getDocumentInformation().getCOSObject()
                    + document.getDocumentCatalog().getMetadata();
        }
    }
}
