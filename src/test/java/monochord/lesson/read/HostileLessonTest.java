package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Growth;
import monochord.Thorough;
import monochord.lesson.Reading;
import monochord.text.SafeText;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A lesson from elsewhere is data: whatever it holds, it is read or refused, in due time, and nothing of it steers a terminal. */
@Tag("attack")
class HostileLessonTest {
    private static final Path FILE = Path.of("1-odd.md");
    /** Characters of the largest lesson that is read, or of one that shows as well whether time grows with its square. */
    private static final int LENGTH = Thorough.times(40_000, Source.MOST_BYTES - 1000);

    private static final int MUTATIONS = Thorough.times(500, 8_000);
    private static final String HEAD = "---\ntitle: T\ngrade: 1\nneeds: []\nskills: [borrowed-chord]\n---\n";
    private static final String LESSON = HEAD + """

            ## One

            Play ${chord IV}, *then* lower **it** to ${degree b6}.

            - one
              - `two`

            ```compare
            IV I
            IV iv I
            ```

            ```ask
            skill: borrowed-chord
            subject: iv
            keys: E, then Db
            count: 4
            ```
            """;

    private static Reading read(String text) {
        return LessonReader.read(FILE, text, null);
    }

    @Test
    void theLessonThatIsMutatedIsSound() {
        assertEquals(List.of(), read(LESSON).faults());
    }

    @Test
    void neverThrowsWhateverBecomesOfALesson() {
        String[] scraps = {
            "\n",
            "`",
            "```",
            "*",
            "**",
            "_",
            "${",
            "}",
            "<",
            "[",
            "](",
            "> ",
            "- ",
            "1. ",
            "    ",
            "#",
            ":",
            ",",
            "---",
            "\u001b[2J",
            "\u202e",
            "\u0000",
            "\ud800",
            "𝄫",
            "♭",
            "ask",
            "keys:",
            "same",
            "\t",
            "&#7;",
            "\\",
            "\r"
        };
        long sound = IntStream.range(0, MUTATIONS)
                .parallel()
                .filter(seed -> checked(read(mutated(scraps, new Random(seed)))))
                .count();
        assertTrue(sound > MUTATIONS / 100 && sound < MUTATIONS - MUTATIONS / 100, "both happen: " + sound);
    }

    private static String mutated(String[] scraps, Random random) {
        StringBuilder text = new StringBuilder(LESSON);
        for (int change = random.nextInt(4); change >= 0; change--) {
            mutate(text, scraps, random);
        }
        return text.toString();
    }

    private static void mutate(StringBuilder text, String[] scraps, Random random) {
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + random.nextInt(6));
        text.replace(from, to, random.nextInt(3) == 0 ? "" : scraps[random.nextInt(scraps.length)]);
    }

    private static boolean checked(Reading reading) {
        String all = reading.toString();
        assertTrue(all.codePoints().allMatch(SafeText::isSafe), all);
        assertTrue(reading.faults().stream().allMatch(fault -> fault.line() >= 1 && fault.column() >= 1));
        return reading.isSound();
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
                "![",
                "](a)",
                "*a ",
                "*a **b ",
                "*a _b ",
                "a**b",
                "**",
                "_",
                "`",
                "` `` ",
                "<a ",
                "<!--",
                "<?",
                "&a",
                "&#27;",
                "\\",
                "\t- ",
                "```\n",
                "- ```\n",
                "a\n",
                "\n",
                "[a]: b\n",
                "${",
                "${key}",
                "${${",
                "${a ",
                "```show\n",
                "```ask\nskill: steps\n```\n",
                "# a\n",
                "a\n===\n",
                "| a ",
                "```show\nI V\n```\n",
                "- a\n   ```\n",
                "<a \n",
                "\ud834\udd2b",
                "é",
                ": ",
                "---\n");
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("storms")
    void readsALargeFileOfOneThingInDueTime(String thing) {
        Growth.assertLinear(
                thing,
                LENGTH,
                characters -> HEAD + thing.repeat(characters / thing.length()),
                text -> checked(read(text)));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("storms")
    void readsALargeFileOfParagraphsOfOneThingInDueTime(String thing) {
        String paragraph = (thing.repeat(1900 / thing.length()) + "\n").repeat(4) + "\n";
        Growth.assertLinear(
                thing,
                LENGTH,
                characters -> HEAD + paragraph.repeat(characters / paragraph.length()),
                text -> checked(read(text)));
    }

    @Test
    void refusesTenMegabytes(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("1-big.md"), LESSON + "word ".repeat(2_000_000));
        Reading reading = Library.check(file);
        assertEquals(
                List.of(file + ":1:1: the file is larger than 256 KB; split it into several"),
                reading.faults().stream().map(Object::toString).toList());
        assertTrue(reading.lesson().isEmpty());
    }

    @ParameterizedTest(name = "[{index}]")
    @ValueSource(
            strings = {
                "\u001b[2J",
                "\u009b2J",
                "\u0007",
                "\u202e",
                "\u2066",
                "\u200b",
                "\u0000",
                "\u2028",
                "&#27;[2J",
                "&#x202e;"
            })
    void letsNothingThroughThatSteersATerminal(String hidden) {
        for (String text : List.of(
                LESSON.replace("One", "O" + hidden + "ne"),
                LESSON.replace("IV iv I", "IV " + hidden),
                LESSON.replace("title: T", "title: T" + hidden),
                LESSON.replace("subject: iv", "subject: iv" + hidden),
                LESSON.replace("compare", "com" + hidden + "pare"),
                LESSON.replace("${chord IV}", "${chord " + hidden + "}"),
                LESSON + "```code\n" + hidden + "\n```\n")) {
            Reading reading = read(text);
            checked(reading);
            assertTrue(!reading.isSound() || hidden.startsWith("&"), text);
        }
    }

    @Test
    void keepsTheNameOfAFileFromSteeringATerminal() {
        Reading reading = LessonReader.read(Path.of("1-\u001b[2J.md"), "x", null);
        assertEquals("1-\uFFFD[2J.md:1:1: ", reading.faults().get(0).toString().substring(0, 15));
    }

    @Test
    void readsAFileFromAnyEditor() {
        assertEquals(List.of(), read("\uFEFF" + LESSON).faults());
        assertEquals(List.of(), read(LESSON.replace("\n", "\r\n")).faults());
        assertEquals(
                read(LESSON).lesson().map(Object::toString),
                read(LESSON.replace("\n", "\r\n")).lesson().map(Object::toString));
    }

    @Test
    void takesABlockInABlockForWhatItIs() {
        Reading reading = read(LESSON + "\n````show\n```ask\nI\n```\n````\n");
        assertFalse(reading.isSound());
        assertNotEquals(List.of(), reading.lesson().orElseThrow().parts());
    }
}
