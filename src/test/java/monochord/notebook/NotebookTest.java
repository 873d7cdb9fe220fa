package monochord.notebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A notebook is written as it is read, byte for byte, and any Markdown viewer sees the same blocks as we do. */
class NotebookTest {
    private static final Path FILE = Path.of("evening.md");
    private static final int CASES = 10_000;

    /** Prose that holds no block of ours: each is closed, and no HTML stands in it. */
    private static final List<String> PROSE = List.of(
            "Thursday, and the *Lantern Quay* band wants a lift.\n",
            "# One\n",
            "### Three `with` code\n",
            "Under it a line\n===\n",
            "\n",
            "\n\n",
            "- a list\n- of two\n",
            "- a list with a block\n\n  ```java\n  a\n  ```\n",
            "1. one\n\n   still one\n",
            "> ```console\n> ▸ show C\n> ```\n",
            "```java\nint a = 1;\n```\n",
            "```console of another kind\n▸ show C\n```\n",
            "~~~text\n```console\n~~~\n",
            "`````\n```console\n▸ show C\n```\n`````\n",
            "    ```console\n",
            "`` a ``` b ``\n",
            "```inline``` is no block\n",
            "▸ no line of a block\n",
            "---\n",
            "1 \\< 2 & 3 | 4\n",
            "  two spaces  \n",
            "[a]: b\n",
            "\ta tab\n",
            "A♭ 𝄫 é 日本\n");

    private static final List<String> ANSWERED = List.of(
            "B♭  B♭ D F",
            "",
            "```",
            "````console",
            "   `````",
            "    ```",
            "~~~",
            "▸ looks typed",
            "▹ looks gone on with",
            "▸",
            "$ looks like a shell",
            "---",
            "# no heading",
            "    ██   ██   B♭",
            "trailing   ",
            "<script>alert(1)</script>",
            "\t\t",
            "─┴─");

    private static final List<String> TYPED = List.of(
            "show bVI", "", "▸ x", "$ ls", "  set in", "```", "var a = 1;\na + 1", "if (true) {\n\n}", "\n", "𝄪");

    static List<Path> demos() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("transcripts-demo"))) {
            return files.filter(file -> file.toString().endsWith(".md")).toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("demos")
    void aDemoIsWrittenAsItIsRead(Path file) throws IOException {
        NotebookReading reading = NotebookReader.read(file);

        assertEquals(List.of(), reading.faults());
        check(Files.readString(file), reading.notebook().orElseThrow());
    }

    @Test
    void anyNotebookIsReadAsItWasMade() {
        int[] exchanges = IntStream.range(0, CASES)
                .parallel()
                .map(seed -> checked(new Random(seed)))
                .toArray();

        assertTrue(IntStream.of(exchanges).filter(many -> many > 3).count() > CASES / 10);
        assertTrue(IntStream.of(exchanges).anyMatch(many -> many == 0));
    }

    private static int checked(Random random) {
        Notebook made = made(random);
        NotebookReading reading = NotebookReader.read(FILE, made.toString());
        assertEquals(List.of(), reading.faults(), made::toString);
        Notebook read = reading.notebook().orElseThrow();
        assertEquals(bare(made.exchanges()), bare(read.exchanges()), made::toString);
        check(made.toString(), read);
        return made.exchanges().size();
    }

    private static Notebook made(Random random) {
        List<Notebook.NotebookPart> parts = new ArrayList<>();
        for (int part = random.nextInt(6); part > 0; part--) {
            parts.add(random.nextBoolean() ? new Notebook.NotebookProse(0, prose(random)) : console(random));
        }
        Start start = Start.of(
                Key.parse("Eb"),
                OptionalLong.of(random.nextInt(9)),
                new Screen(60, 20),
                "half-steps",
                NoteNaming.GERMAN);
        if (random.nextBoolean()) {
            parts.add(0, new Notebook.NotebookProse(0, "Without a head.\n\n"));
            start = Start.USUAL;
        }
        return new Notebook(start, parts);
    }

    /** An empty line between the scraps, or what one begins would go on in the next. */
    private static String prose(Random random) {
        return IntStream.rangeClosed(0, random.nextInt(4))
                        .mapToObj(any -> one(PROSE, random))
                        .collect(Collectors.joining("\n"))
                + "\n";
    }

    private static Notebook.Console console(Random random) {
        return new Notebook.Console(
                0,
                IntStream.rangeClosed(0, random.nextInt(3))
                        .mapToObj(any -> Exchange.of(one(TYPED, random), answer(random)))
                        .toList());
    }

    private static String answer(Random random) {
        return IntStream.range(0, random.nextInt(5))
                .mapToObj(any -> one(ANSWERED, random))
                .collect(Collectors.joining("\n"));
    }

    private static String one(List<String> scraps, Random random) {
        return scraps.get(random.nextInt(scraps.size()));
    }

    private static List<List<Object>> bare(List<Exchange> exchanges) {
        return exchanges.stream()
                .map(exchange -> List.<Object>of(exchange.isOpening(), exchange.typed(), exchange.answer()))
                .toList();
    }

    /** The blocks are those that commonmark-java finds with its usual settings, at the same lines, with the same text. */
    private static void check(String text, Notebook read) {
        assertEquals(text, read.toString());
        String head = read.start().written();
        String below = "\n".repeat((int) head.lines().count()) + text.substring(head.length());
        List<String> found = new ArrayList<>();
        Node all = Parser.builder()
                .includeSourceSpans(IncludeSourceSpans.BLOCKS)
                .build()
                .parse(below);
        for (Node node = all.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof FencedCodeBlock block && "console".equals(block.getInfo())) {
                found.add(block.getSourceSpans().get(0).getLineIndex() + 1 + "\n" + block.getLiteral());
            }
        }
        assertEquals(found, read.parts().stream().flatMap(NotebookTest::block).toList(), text);
    }

    private static Stream<String> block(Notebook.NotebookPart part) {
        return part instanceof Notebook.Console console
                ? Stream.of(console.line() + "\n" + inside(new Notebook(Start.USUAL, List.of(console))))
                : Stream.empty();
    }

    /** What stands between the first line and the last. */
    private static String inside(Notebook block) {
        String written = block.toString();
        return written.substring(written.indexOf('\n') + 1, written.lastIndexOf('\n', written.length() - 2) + 1);
    }
}
