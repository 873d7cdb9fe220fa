package monochord.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Growth;
import monochord.Thorough;
import monochord.text.SafeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong with a notebook file is said with its place, in one pass, and in due time. */
class NotebookFaultsTest {
    private static final Path FILE = Path.of("evening.md");
    private static final int MUTATIONS = Thorough.times(1_000, 20_000);

    @TempDir
    private Path folder;

    private static List<String> faults(String text) {
        return said(NotebookReader.read(FILE, text));
    }

    private static List<String> said(NotebookReading reading) {
        return reading.faults().stream().map(Object::toString).toList();
    }

    static Stream<Arguments> faulty() {
        return Stream.of(
                Arguments.of(
                        "# A\n\n```console\nshow C\n▸ show D\n```\n",
                        "4:1: nothing was typed above this line; begin it with ▸ and what was typed"),
                Arguments.of("```console\n▸ show C\n", "1:1: the block is not closed; write ``` on a line below it"),
                Arguments.of(
                        "````console\n▸ show C\n```\n", "1:1: the block is not closed; write ``` on a line below it"),
                Arguments.of("---\nnotebook: 2\n---\n", "2:11: this notebook cannot be read; write notebook: 1"),
                Arguments.of("---\nkey: H\n---\n", "2:6: this key cannot be read; write for example key: Eb"),
                Arguments.of("---\nseed: -1\n---\n", "2:7: this seed cannot be read; write a whole number"),
                Arguments.of(
                        "---\nscreen: 0x24\n---\n", "2:9: this screen cannot be read; write for example screen: 80x24"),
                Arguments.of(
                        "---\nlesson: ../../etc/passwd\n---\n",
                        "2:9: this lesson cannot be read; write the file name of the lesson without its number and .md"),
                Arguments.of("a <b>\n", "1:3: HTML is not read; write it in Markdown, or a space after <"),
                Arguments.of("a\n\nb \u001b[2J\n", "3:3: the control character U+001B; leave it out"),
                Arguments.of(
                        "```console\n▸ show C\n\u202eC\n```\n", "3:1: the control character U+202E; leave it out"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("faulty")
    void aFaultIsSaidWithItsPlace(String text, String fault) {
        assertEquals(List.of("evening.md:" + fault), faults(text));
    }

    @Test
    void allFaultsAreSaidAtOnceInTheirOrder() {
        assertEquals(
                List.of(2, 5, 8, 10),
                NotebookReader.read(FILE, "---\nseed: x\n---\n\n<b>\n\n```console\nx\n```\n\u0000\n").faults().stream()
                        .map(fault -> fault.line())
                        .toList());
    }

    @Test
    void aFieldThatNobodyKnowsIsAFault() {
        assertTrue(faults("---\nrun: rm\n---\n").get(0).startsWith("evening.md:2:1: "));
    }

    /** Even one that holds nothing. */
    @Test
    void aHundredMegabytesAreRefused() throws IOException {
        Path file = folder.resolve("large.md");
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(100L << 20);
        }

        NotebookReading reading = NotebookReader.read(file);

        assertEquals(List.of(file + ":1:1: the file is larger than 1024 KB; split it into several"), said(reading));
        assertTrue(reading.notebook().isEmpty());
        assertEquals("", reading.digest());
    }

    @Test
    void whatIsNoFileOrNoTextIsRefused() throws IOException {
        assertEquals(
                List.of(folder + ":1:1: this is not a file; name a Markdown file"), said(NotebookReader.read(folder)));
        Path gone = folder.resolve("gone.md");
        assertEquals(
                List.of(gone + ":1:1: there is no such file; name a Markdown file"), said(NotebookReader.read(gone)));
        Path latin = Files.write(folder.resolve("latin.md"), "ab\ncd\u00e9".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                latin + ":2:3: from here on the file is not in UTF-8; save it in the encoding UTF-8",
                said(NotebookReader.read(latin)).get(0));
        Path loop = Files.createSymbolicLink(folder.resolve("loop.md"), folder.resolve("loop.md"));
        assertFalse(NotebookReader.read(loop).isSound());
    }

    @Test
    void moreLinesThanAnEveningHasAreAFault() {
        String many = "```console\n" + "▸ C\n\n".repeat(NotebookReader.MOST_TYPED + 1) + "```\n";

        assertEquals(List.of("evening.md:4002:1: more than 2000 typed lines; make two notebooks of it"), faults(many));
        assertEquals(List.of(), faults(many.replaceFirst("▸ C\n\n", "")));
    }

    static Stream<String> storms() {
        return Stream.of(
                "> ",
                ">",
                "- ",
                "1. ",
                "  - a\n",
                "[",
                "[a](",
                "*a **b ",
                "`",
                "` `` ",
                "<a ",
                "<!--",
                "&#27;",
                "```\n",
                "```console\n",
                "```console\n▸ a\n```\n",
                "~~~\n",
                "▸ \n",
                "\n",
                "---\n",
                "---\nkey: C\n",
                "$ a\n",
                "▹\n",
                "# a\n",
                "a\n===\n",
                "\t",
                "\\",
                "\0",
                "\ud834\udd2b");
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("storms")
    void aLargeFileOfOneThingIsReadInDueTime(String thing) {
        int bytes = thing.getBytes(StandardCharsets.UTF_8).length;
        int length = Thorough.times(NotebookReader.MOST_BYTES / 16, NotebookReader.MOST_BYTES - 100);

        Growth.assertLinear(thing, length, characters -> thing.repeat(characters / bytes), text -> {
            NotebookReading reading = NotebookReader.read(FILE, text);
            assertTrue(reading.toString().codePoints().allMatch(SafeText::isSafe));
            reading.notebook().ifPresent(NotebookFaultsTest::blocks);
        });
    }

    private static long blocks(Notebook notebook) {
        return notebook.parts().stream()
                .filter(Notebook.NotebookProse.class::isInstance)
                .mapToLong(part -> ((Notebook.NotebookProse) part).blocks().size())
                .sum();
    }

    @Test
    void nothingThatBecomesOfAFileMakesItThrow() {
        String sound = "---\nnotebook: 1\nkey: Eb\n---\n\n# A\n\n```console\n$ monochord\n\n▸ show C\nC\n▹ x\n```\n";
        String[] scraps = {
            "\n",
            "```",
            "````",
            "~~~",
            "▸",
            "▹",
            "$ ",
            "---",
            ":",
            "<",
            "\u001b",
            "\u0000",
            "\ud800",
            "\r",
            "\t",
            "> ",
            "- ",
            "console",
            "seed: 99999999999999999999\n",
            "\u202e",
            "    "
        };
        long held = IntStream.range(0, MUTATIONS)
                .parallel()
                .filter(seed -> {
                    NotebookReading reading = NotebookReader.read(FILE, mutated(sound, scraps, new Random(seed)));
                    assertTrue(reading.toString().codePoints().allMatch(SafeText::isSafe));
                    return reading.isSound();
                })
                .count();
        assertTrue(held > MUTATIONS / 100 && held < MUTATIONS - MUTATIONS / 100, "both happen: " + held);
    }

    private static String mutated(String sound, String[] scraps, Random random) {
        StringBuilder text = new StringBuilder(sound);
        for (int change = random.nextInt(4); change >= 0; change--) {
            int from = random.nextInt(text.length());
            int to = Math.min(text.length(), from + random.nextInt(6));
            text.replace(from, to, random.nextInt(3) == 0 ? "" : scraps[random.nextInt(scraps.length)]);
        }
        return text.toString();
    }
}
