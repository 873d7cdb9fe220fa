package monochord.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.file.Digest;
import monochord.lesson.read.Faults;
import monochord.lesson.read.MarkdownGuard;
import monochord.lesson.read.Source;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.InlineParser;
import org.commonmark.parser.Parser;

/**
 * Reads notebooks, and finds every fault of a file in one pass. Nothing a file holds makes it throw, and nothing of a file
 * that could steer a terminal gets through.
 */
public final class NotebookReader {
    /** An evening has 30 KB. */
    public static final int MOST_BYTES = 1 << 20;
    /** Typed lines in one notebook. */
    public static final int MOST_TYPED = 2000;

    private static final int MOST_OPEN_BLOCKS = 16;
    /** What stands within a line is not looked at here, which keeps the effort linear. */
    private static final InlineParser NO_INLINES = (lines, block) -> {};

    private static final Parser BLOCKS = Parser.builder()
            .includeSourceSpans(IncludeSourceSpans.BLOCKS)
            .maxOpenBlockParsers(MOST_OPEN_BLOCKS)
            .inlineParserFactory(context -> NO_INLINES)
            .build();

    private final Faults faults;
    private final List<SourceLine> lines;
    private final List<Notebook.NotebookPart> parts = new ArrayList<>();

    private NotebookReader(List<SourceLine> lines, Faults faults) {
        this.lines = lines;
        this.faults = faults;
    }

    /** @param file need not be there; a fault says so */
    public static NotebookReading read(Path file) {
        Faults faults = new Faults(file.toString());
        Source source = new Source(faults, MOST_BYTES);
        Optional<byte[]> bytes = source.bytes(file);
        Optional<Notebook> notebook =
                bytes.map(source::decoded).flatMap(source::lines).map(lines -> notebook(lines, faults));
        return new NotebookReading(
                notebook, faults.inOrder(), bytes.map(Digest::of).orElse(""));
    }

    /**
     * Reads a text as though it stood in a file.
     *
     * @param name the file's path, for the faults
     */
    public static NotebookReading read(Path name, String text) {
        Faults faults = new Faults(name.toString());
        Optional<Notebook> notebook = new Source(faults, MOST_BYTES).lines(text).map(lines -> notebook(lines, faults));
        return new NotebookReading(notebook, faults.inOrder(), Digest.of(text));
    }

    private static Notebook notebook(List<SourceLine> lines, Faults faults) {
        int head = NotebookHead.end(lines);
        Start start = NotebookHead.read(lines.subList(0, head), faults);
        NotebookReader reader = new NotebookReader(below(head, lines), faults);
        reader.parts(head);
        Notebook notebook = new Notebook(start, reader.parts);
        if (notebook.exchanges().size() > MOST_TYPED) {
            int line = notebook.exchanges().get(MOST_TYPED).line();
            faults.at(
                    line, 1, Phrase.of("more than {0} typed lines", MOST_TYPED), Phrase.of("make two notebooks of it"));
        }
        return notebook;
    }

    private static List<SourceLine> below(int head, List<SourceLine> lines) {
        return Stream.concat(
                        lines.stream().limit(head).map(line -> new SourceLine(line.number(), "")),
                        lines.stream().skip(head))
                .toList();
    }

    /** The words between the blocks are taken as they stand; the guard only finds faults in them. */
    private void parts(int head) {
        String text = new MarkdownGuard(faults, false)
                .pass(lines).stream().map(SourceLine::text).collect(Collectors.joining("\n"));
        int next = head;
        for (Node node = BLOCKS.parse(text).getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof FencedCodeBlock block && isConsole(block)) {
                int first = block.getSourceSpans().get(0).getLineIndex();
                prose(next, first);
                next = console(block, first);
            }
        }
        prose(next, lines.size());
    }

    private static boolean isConsole(FencedCodeBlock block) {
        return "console".equals(block.getInfo());
    }

    /** @return the index of the line behind it */
    private int console(FencedCodeBlock block, int first) {
        List<SourceSpan> spans = block.getSourceSpans(); // an empty line has none
        int end = spans.get(spans.size() - 1).getLineIndex() + 1;
        boolean closed = block.getClosingFenceLength() != null;
        if (!closed) {
            faults.at(first + 1, 1, Phrase.of("the block is not closed"), Phrase.of("write ``` on a line below it"));
        }
        List<SourceLine> inside = lines.subList(first + 1, closed ? end - 1 : end);
        parts.add(new Notebook.Console(first + 1, ConsoleText.read(inside, faults)));
        return end;
    }

    private void prose(int from, int to) {
        String text = IntStream.range(from, to)
                .mapToObj(i -> lines.get(i).text() + (i + 1 < lines.size() ? "\n" : ""))
                .collect(Collectors.joining());
        if (!text.isEmpty()) {
            parts.add(new Notebook.NotebookProse(from + 1, text));
        }
    }
}
