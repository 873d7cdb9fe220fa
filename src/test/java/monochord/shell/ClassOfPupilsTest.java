package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import monochord.view.StrictJson;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The Thursday class hands in, is marked and looked at; whole runs of the program. */
class ClassOfPupilsTest {
    private static final long NOW = Instant.parse("2026-12-03T18:00:00Z").toEpochMilli();

    @TempDir
    private Path place;

    private Path home;
    private Path folder;

    @BeforeEach
    void practiceIsSentHomeAndComesBack() throws IOException {
        home = Files.createDirectory(place.resolve("secret-home"));
        folder = Files.createDirectories(place.resolve("desk/in")).getParent();
        run("assign lowered-degree in Eb, C, D count 4 --seed 5 --out in/homework.md")
                .result(0);
        handIn("7b-04", "D", "E", "A", "=1+1");
        handIn("7b-05", "Db", "Eb", "Ab", "");
        handIn("7b-06", "D", "E", "A", "G");
    }

    private Run run(String sentence) {
        return new Run.Outside().inFolder(folder).atHome(home).at(() -> NOW).run(sentence.split(" "));
    }

    private void handIn(String code, String... answers) throws IOException {
        StringBuilder file = new StringBuilder();
        int next = 0;
        for (String line : Files.readAllLines(folder.resolve("in/homework.md"))) {
            file.append(line.equals("code:") ? "code: " + code + "\ngiven: 2026-11-26" : line)
                    .append(line.equals("Answer:") ? " " + answers[next++] : "")
                    .append('\n');
        }
        Files.writeString(folder.resolve("in/" + code + ".md"), file);
    }

    private static String bytes(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1);
    }

    private static String pdf(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    private List<Path> written() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void markedTwiceCountsOnce() {
        assertTrue(run("mark in")
                .result(0)
                .endsWith("10 answers are new on record; class shows what the class can do.\n"));
        assertTrue(
                run("mark in").result(0).endsWith("No answer is new on record; class shows what the class can do.\n"));
    }

    @Test
    void theFirstScreenIsWhatATeacherWants() {
        run("mark in");
        assertEquals("""
                3 pupils, 10 answers, 3 right at the first try.

                To teach next
                1. Lowered degrees: go over this rule. A flat in front of a degree says: a half
                   step below the degree of the major scale.
                The degree not lowered: 7 times in 10 answers, by 7b-06 and 7b-04.
                assign lowered-degree in Eb, C, D count 10 --out not-lowered.md

                Mistakes, the commonest first
                7  the degree not lowered  7b-06, 7b-04

                Over the class
                major keys           C♭ G♭ D♭ A♭ E♭ B♭ F  C  G  D  A  E  B  F♯ C♯
                lowered-degree       ·  ·  ·  ·  -2 ·  ·  -2 ·  -2 ·  ·  ·  ·  ·
                · not yet   - begun   = coming   ≡ known   3 so many unsure   + more than nine

                The pupils
                pupil  answers  right at once  known  of things asked
                7b-04        3              0      0                3
                7b-05        3              3      0                3
                7b-06        4              0      0                3
                """, run("class").result(0));
    }

    @Test
    void whatIsToBeTaughtCanBeAssignedAsItStands() {
        run("mark in");
        String sentence = run("class")
                .out()
                .lines()
                .filter(line -> line.startsWith("assign"))
                .findFirst()
                .orElseThrow();
        assertTrue(run(sentence).result(0).startsWith("Lowered degrees: 10 questions, written to not-lowered.md."));
    }

    @Test
    void overWeeksAndAssignmentsAndOfOnePupil() {
        run("mark in");
        assertTrue(run("class over 2 weeks")
                .result(0)
                .startsWith("3 pupils, 10 answers, 3 right at the first try, over the last 2 weeks.\n"));
        assertEquals(
                "Nothing is on record over the last week.\n",
                run("class over week").result(0));
        assertTrue(run("class over lowered-degree-5").result(0).contains("over lowered-degree-5."));
        assertEquals(
                "Nothing is on record over triads-9.\n",
                run("class over triads-9").result(0));
        assertTrue(run("class 7B-04").result(0).startsWith("""
                7b-04: 3 answers, 0 right at the first try. Times and tries are as told by the
                pupil's file.

                Mistakes, the commonest first
                3  the degree not lowered
                """));
        assertEquals("Nothing of 7b-09 is on record.\n", run("class 7b-09").result(0));
        assertEquals(
                """
                "next Tuesday" is not what a class can be seen over: expected an assignment's
                id, as its file has it, or weeks. Example: class over 2 weeks
                """,
                run("class over next Tuesday").err().lines().limit(2).reduce("", (all, line) -> all + line + "\n"));
    }

    @Test
    void aGroupOfTheListIsSeenAlone() throws IOException {
        Files.writeString(home.resolve("class.csv"), "code,name,group\n7b-04,Ana Lane,Thursday\n7b-05,Ben,Monday\n");
        assertTrue(
                run("mark in").out().endsWith("6 answers are new on record; class shows what the class can do.\n"),
                "7b-06 is not on the list");
        assertTrue(run("class thursday").result(0).startsWith("1 pupil, 3 answers, 0 right at the first try.\n"));
        assertTrue(run("class list").result(0).startsWith("7b-04  Ana Lane  Thursday\n7b-05  Ben       Monday\n"));
    }

    @Test
    void whoIsForgottenIsGoneFromRecordAndList() throws IOException {
        Files.writeString(home.resolve("class.csv"), "7b-04,Ana Lane,Thursday\n7b-05,Ben,Monday\n7b-06,Cleo,\n");
        run("mark in");
        assertEquals("""
                7b-04 is forgotten: 3 answers are off the record.
                The code and the name are off the list.
                Files that were handed in, pages and copies you made are yours to delete.
                """, run("class forget 7b-04").result(0));
        try (Stream<Path> files = Files.list(home)) {
            for (Path file : files.toList()) {
                assertFalse(bytes(file).contains("7b-04") || bytes(file).contains("Ana"), file.toString());
            }
        }
        assertTrue(run("mark in").out().endsWith("No answer is new on record; class shows what the class can do.\n"));
        assertEquals(
                "Nothing of 7b-04 is on record, nor on the list.\n",
                run("class forget 7b-04").result(1));
    }

    @Test
    void twoTeachersPutTheirRecordsTogether() {
        run("mark in");
        assertEquals(
                "10 answers of pupils are in thursday.db now, and nothing of your own.\n",
                run("class copy thursday.db").result(0));
        home = place.resolve("colleague");
        assertEquals(
                "10 answers came in; what was here stays.\n",
                run("class join thursday.db").result(0));
        assertEquals(
                "All of it was here already, or is of nobody on your list.\n",
                run("class join thursday.db").result(0));
        assertTrue(run("mark in").out().endsWith("No answer is new on record; class shows what the class can do.\n"));
    }

    @Test
    void feedbackSaysWhatWasRightWhichMistakeTheWayAndWhatToPractise() throws IOException {
        assertTrue(run("mark in --feedback feedback --csv marks.csv").result(0).endsWith("\n10 files written.\n"));
        String page = Files.readString(folder.resolve("feedback/7b-05-lowered-degree-5.md"));
        assertTrue(page.startsWith("""
                # 7b-05: lowered-degree-5

                3 of 4 right.

                ## To look at again

                ### 4\\. Which note is the lowered third of E♭ major?

                No answer.

                A right answer: G♭

                The way: Count up E♭ F G: G is the third. A half step down, same letter, is G♭.

                ## Right

                ### 1\\. Which note is the lowered seventh of E♭ major?

                You wrote: Db
                """), page);
        assertTrue(page.endsWith("""
                ## To practise

                practise lowered-degree in Eb

                Times and tries are as told by the file.

                """), page);
        String wrong = pdf(folder.resolve("feedback/7b-06-lowered-degree-5.pdf"));
        assertTrue(wrong.contains("The mistake: the degree not lowered"), wrong);
        assertTrue(Files.readString(folder.resolve("feedback/7b-06-lowered-degree-5.html"))
                .contains("You wrote: D"));
        assertTrue(bytes(folder.resolve("marks.csv"))
                .contains(
                        "lowered-degree-5,7b-04,4,lowered-degree,b3,Eb major,'=1+1,1,unreadable,,Gb,in/7b-04.md\r\n"));
        assertEquals(13, bytes(folder.resolve("marks.csv")).lines().count());
    }

    @Test
    void whatIsThereStays() {
        run("mark in --feedback feedback --csv marks.csv");
        Run again = run("mark in --csv marks.csv");
        assertEquals(3, again.status());
        assertTrue(run("mark in --csv marks.csv --over").result(0).endsWith("\nWritten: marks.csv\n"));
    }

    @Test
    void forTheWallThereAreCodesOnly() throws IOException {
        Files.writeString(home.resolve("class.csv"), "7b-04,Ana Lane,Thursday\n7b-05,Ben,Monday\n7b-06,Cleo,\n");
        run("mark in");
        assertEquals(
                "Written: wall.html, wall.pdf\n",
                run("class --html wall.html --pdf wall.pdf").result(0));
        String words = pdf(folder.resolve("wall.pdf"));
        for (String wanted :
                List.of("3 pupils, 10 answers", "Lowered degrees", "the degree not lowered", "7b-06", "≡ known")) {
            assertTrue(words.contains(wanted), words);
            assertTrue(Files.readString(folder.resolve("wall.html")).contains(wanted), wanted);
        }
    }

    /** Whatever is made, its bytes tell no name, user, host or path; PDFs neither in what they say of themselves. */
    @Test
    void noFileTellsWhoOrWhere() throws IOException {
        Files.writeString(home.resolve("class.csv"), "7b-04,Ana Lane,Thursday\n7b-05,Ben Ode,Monday\n7b-06,Cleo Qu,\n");
        run("mark in --feedback feedback --csv marks.csv");
        run("class --html wall.html --pdf wall.pdf --svg wall.svg");
        run("class copy thursday.db");
        List<String> secrets = List.of(
                "Ana Lane",
                "Ben Ode",
                "Cleo Qu",
                "secret-home",
                place.toString(),
                System.getProperty("user.home"),
                "user.name");
        List<Path> all = written();
        assertEquals(18, all.size());
        for (Path file : all) {
            for (String secret : secrets) {
                assertFalse(bytes(file).contains(secret), file + " tells " + secret);
            }
            if (file.toString().endsWith(".pdf")) {
                try (PDDocument document = Loader.loadPDF(file.toFile())) {
                    var told = document.getDocumentInformation();
                    assertEquals(java.util.Set.of("Title", "Creator", "Producer"), told.getMetadataKeys());
                    assertEquals("Monochord Monochord", told.getCreator() + " " + told.getProducer());
                }
            }
        }
    }

    @Test
    void programsReadTheClass() {
        run("mark in");
        String json = run("class --json").result(0);
        StrictJson.read(json.strip());
        assertTrue(
                json.startsWith(
                        "{\"kind\":\"class\",\"pupils\":[\"7b-04\",\"7b-05\",\"7b-06\"],\"asked\":10,\"right\":3,\"grid\":[{\"skill\":"
                                + "\"lowered-degree\",\"key\":\"C major\",\"mastery\":0.1231,\"asked\":3,\"right\":1,\"below\":[\"7b-04\",\"7b-06\"]}"),
                json);
        assertTrue(
                json.contains(
                        "\"mistakes\":[{\"misconception\":\"not-lowered\",\"count\":7,\"codes\":[\"7b-06\",\"7b-04\"]}]"),
                json);
        assertTrue(
                json.contains("\"assign\":\"assign lowered-degree in Eb, C, D count 10 --out not-lowered.md\""), json);
    }

    @Test
    void whereNothingWasMarkedTheNextStepIsSaid() {
        assertEquals(
                "Nothing has been marked yet: mark takes a file that was handed in, or a folder.\n",
                run("class").result(0));
        assertEquals(
                "Nothing of 7b-04 is on record, nor on the list.\n",
                run("class forget 7b-04").result(1));
    }
}
