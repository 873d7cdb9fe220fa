package monochord.classroom;

import static monochord.classroom.Homework.borrowed;
import static monochord.classroom.Homework.handedIn;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import monochord.Growth;
import monochord.Thorough;
import monochord.classroom.HandInFiles.MarkedFile;
import monochord.lesson.read.Source;
import monochord.text.SafeText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever lies in the folder of hand-ins, it changes nothing but its own row. */
class HostileHandInsTest {
    private static final int MUTATIONS = Thorough.times(1_000, 20_000);
    private static final String FILE = handedIn(borrowed(), "Am", "C", "D");

    @TempDir
    private Path folder;

    @BeforeEach
    void handIn() throws IOException {
        Files.writeString(folder.resolve("homework.md"), AssignmentWriter.text(borrowed()));
        Files.writeString(folder.resolve("anna.md"), FILE);
    }

    private List<MarkedFile> mark() {
        try {
            List<MarkedFile> marked = new ArrayList<>();
            HandInFiles.of(
                            List.of(folder),
                            TeachersFiles.NONE,
                            name -> Path.of(name).getFileName().toString())
                    .mark(marked::add);
            return marked;
        } catch (IOException failed) {
            throw new AssertionError(failed);
        }
    }

    /** What is said of the file beside the one of anna, which is marked as ever. */
    private List<String> faultsOfTheOther() {
        List<MarkedFile> marked = mark();
        assertEquals(
                List.of("right right right"),
                marked.stream()
                        .map(MarkedFile::handIn)
                        .filter(one -> one.file().equals("anna.md"))
                        .map(Homework::verdicts)
                        .toList());
        return marked.stream()
                .map(MarkedFile::handIn)
                .filter(one -> !one.file().equals("anna.md"))
                .flatMap(one -> Homework.faults(one).stream())
                .toList();
    }

    static Stream<Arguments> hostile() {
        String code = "code: 7b-04";
        return Stream.of(
                Arguments.of("", "x.md:1:1: the head is missing; keep the file as it was given out"),
                Arguments.of("x".repeat(10 << 20), "x.md:1:1: the file is larger than 256 KB; split it into several"),
                Arguments.of("\0".repeat(200), "x.md:1:1: the control character U+0000; leave it out"),
                Arguments.of(
                        FILE.replace("Am", "Am\u001b[31m"), "x.md:28:11: the control character U+001B; leave it out"),
                Arguments.of(
                        FILE.replace(code, "code: ../../../etc/passwd"),
                        "x.md:11:7: \"../../../etc/passwd\" is not a pupil's code: expected letters, digits and hyphens, at most 16; write for example 7b-04"),
                Arguments.of(
                        FILE.replace(code, "code: " + "7".repeat(100)),
                        "x.md:11:7: \"" + "7".repeat(40)
                                + "\u2026\" is not a pupil's code: expected letters, digits and hyphens, at most 16; write for example 7b-04"),
                Arguments.of(
                        FILE.replace("borrowed-chords-7", "../homework"),
                        "x.md:2:13: what stands behind assignment cannot be read; write for example triads-4711"),
                Arguments.of(
                        FILE.replaceFirst("skill: borrowed-chord", "skill: Runtime.getRuntime()"),
                        "x.md:20:8: unknown skill \"Runtime.getRuntime()\"; write one of "),
                Arguments.of(
                        FILE.replace("item: 1", "item: 99999999999999999999"),
                        "x.md:19:7: this question has no item that can be read; write a whole number"));
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void aHostileFileIsARowOfFaults(String text, String fault) throws IOException {
        Files.writeString(folder.resolve("x.md"), text);
        List<String> faults = faultsOfTheOther();
        assertTrue(faults.get(0).startsWith(fault), faults.get(0));
    }

    @Test
    void bytesThatAreNoUtf8AreToldFromWhereOn() throws IOException {
        byte[] latin = FILE.replace("Answer: D", "Answer: D, voil\u00e0").getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve("x.md"), latin);
        List<String> faults = faultsOfTheOther();
        assertTrue(
                faults.get(faults.size() - 1)
                        .matches(
                                "x.md:[0-9]+:[0-9]+: from here on the file is not in UTF-8; save it in the encoding UTF-8"),
                () -> faults.toString());
    }

    @Test
    void linksAreToldAndNotFollowed() throws IOException {
        Path outside = Files.writeString(folder.resolveSibling(folder.getFileName() + "-outside.md"), FILE);
        Files.createSymbolicLink(folder.resolve("link.md"), outside);
        Files.createSymbolicLink(folder.resolve("round"), folder);
        Files.createSymbolicLink(folder.resolve("nowhere.md"), Path.of("not-there"));
        assertEquals(
                List.of(
                        "link.md:1:1: this is not a file; hand in a Markdown file",
                        "nowhere.md:1:1: this is not a file; hand in a Markdown file",
                        "round:1:1: this is not a file; hand in a Markdown file"),
                faultsOfTheOther());
        Files.delete(outside);
    }

    @Test
    void anAssignmentFromElsewhereDoesNotTakeThePlaceOfTheTeachers() throws IOException {
        Assignment easier = Assignment.same(
                borrowed().head(), Homework.STRICT, "", List.of(Homework.question("borrowed-chord", "iv", "E major")));
        Files.writeString(folder.resolve("zzz.md"), AssignmentWriter.text(easier));
        assertEquals(
                List.of("zzz.md:1:1: no pupil's code stands in the head; write for example code: 7b-04"),
                faultsOfTheOther());
    }

    @Test
    void manyFilesAreMarkedInTheirOrderEachAlone() throws IOException {
        for (int i = 0; i < 1_000; i++) {
            String name = "p%04d".formatted(i);
            Files.writeString(folder.resolve(name + ".md"), FILE.replace("7b-04", name));
        }
        List<MarkedFile> marked = mark();
        assertEquals(1_001, marked.size());
        assertEquals("p0999.md", marked.get(1_000).handIn().file());
        assertTrue(marked.stream()
                .allMatch(one -> one.handIn().right() == 3 && one.doubles().isEmpty()));
    }

    @Test
    void theSamePupilTwiceIsToldWithTheEarlierFile() throws IOException {
        Files.writeString(folder.resolve("bertha.md"), FILE);
        assertEquals("anna.md", mark().get(1).doubles().orElseThrow());
        assertTrue(mark().get(0).doubles().isEmpty());
    }

    @Test
    void nothingThatAFileHoldsMakesItThrow() {
        Random random = new Random(18);
        String signs = "`#-:\n\t\r\0\u001b|\"*_>1 9aé\uD834\uDD1E\u2014\u202e";
        int changed = 0;
        for (int i = 0; i < MUTATIONS; i++) {
            StringBuilder text = new StringBuilder(FILE);
            for (int j = 0; j < 1 + random.nextInt(6); j++) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(3)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, signs.charAt(random.nextInt(signs.length())));
                    default -> text.delete(at, Math.min(text.length(), at + random.nextInt(200)));
                }
            }
            MarkedHandIn marked = Homework.marked(text.toString());
            changed += marked.faults().isEmpty() ? 0 : 1;
            Homework.faults(marked).forEach(fault -> assertEquals(SafeText.oneLine(fault), fault));
        }
        assertNotEquals(0, changed);
    }

    @Test
    void theEffortGrowsWithTheLengthOfTheFile() {
        List<UnaryOperator<String>> shapes = List.of(
                "x"::concat,
                "\n1. Am "::concat,
                "\n> - * "::concat,
                "\n```ask\nitem: 1\n"::concat,
                "a: "::concat,
                "##"::concat);
        for (UnaryOperator<String> shape : shapes) {
            String piece = shape.apply("");
            Growth.assertLinear(
                    piece,
                    Source.MOST_BYTES - FILE.length(),
                    length -> FILE + piece.repeat(length / piece.length()),
                    Homework::marked);
        }
        assertFalse(shapes.isEmpty());
    }
}
