package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/**
 * Somebody's words in Markdown as blocks. Lenient where a lesson is strict: every word is kept, what the blocks have no
 * form for becomes a paragraph, and only HTML is left out.
 */
public final class LenientProse {
    private static final int DEEPEST_LIST = 3;
    private static final int MOST_OPEN_BLOCKS = 16;
    private static final Parser MARKDOWN = Parser.builder()
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .maxOpenBlockParsers(MOST_OPEN_BLOCKS)
            .build();

    private final Faults unsaid = new Faults("");
    private final List<ProseBlock> blocks = new ArrayList<>();
    private final List<SourceLine> lines;

    private LenientProse(List<SourceLine> lines) {
        this.lines = lines;
    }

    public static List<ProseBlock> of(String markdown) {
        Faults unsaid = new Faults("");
        List<SourceLine> lines = new MarkdownGuard(unsaid)
                .pass(new Source(unsaid, Integer.MAX_VALUE - 1).lines(markdown).orElseThrow());
        LenientProse words = new LenientProse(lines);
        words.within(MARKDOWN.parse(lines.stream().map(SourceLine::text).collect(Collectors.joining("\n"))), 0);
        return List.copyOf(words.blocks);
    }

    private void within(Node parent, int depth) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            block(node, depth);
        }
    }

    private void block(Node node, int depth) {
        if (node instanceof Heading heading) {
            add(new ProseBlock.Heading(heading.getLevel() < 3 ? 2 : 3, spans(heading)));
        } else if (node instanceof Paragraph) {
            add(new ProseBlock.Paragraph(spans(node)));
        } else if (node instanceof ListBlock list) {
            list(list, Math.min(DEEPEST_LIST, depth + 1));
        } else if (node instanceof FencedCodeBlock code) {
            code(code.getLiteral());
        } else if (node instanceof IndentedCodeBlock code) {
            code(code.getLiteral());
        } else {
            within(node, depth);
        }
    }

    private List<TextRun> spans(Node node) {
        return Inlines.of(node, lines, unsaid);
    }

    private void add(ProseBlock block) {
        if (!block.spans().isEmpty()) {
            blocks.add(block);
        }
    }

    private void code(String literal) {
        literal.lines()
                .forEach(line -> add(new ProseBlock.Paragraph(List.of(new TextRun(line, TextRun.RunStyle.CODE)))));
    }

    private void list(ListBlock list, int depth) {
        int number = list instanceof OrderedList ordered && ordered.getMarkerStartNumber() != null
                ? ordered.getMarkerStartNumber()
                : 1;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            item(item, depth, list instanceof BulletList ? 0 : number++);
        }
    }

    private void item(Node item, int depth, int number) {
        for (Node node = item.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Paragraph && node.getPrevious() == null) {
                add(new ProseBlock.ListItem(depth, number, spans(node)));
            } else {
                block(node, depth);
            }
        }
    }
}
