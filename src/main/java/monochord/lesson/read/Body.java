package monochord.lesson.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.lesson.LessonPart;
import monochord.lesson.ProseBlock;
import monochord.text.Phrase;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Turns the Markdown below the head into parts. */
final class Body {
    private static final int DEEPEST_LIST = 3;
    private static final int MOST_OPEN_BLOCKS = 16;
    private static final Parser MARKDOWN = Parser.builder()
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .maxOpenBlockParsers(MOST_OPEN_BLOCKS)
            .build();

    private final List<SourceLine> lines;
    private final Tunes tunes;
    private final Faults faults;
    private final List<LessonPart> parts = new ArrayList<>();
    private final List<ProseBlock> prose = new ArrayList<>();
    private int proseLine;

    private Body(List<SourceLine> lines, Tunes tunes, Faults faults) {
        this.lines = lines;
        this.tunes = tunes;
        this.faults = faults;
    }

    /**
     * @param lines of the whole file, those of the head left empty
     * @param tunes that a block may name
     */
    static List<LessonPart> read(List<SourceLine> lines, Tunes tunes, Faults faults) {
        Body body = new Body(new MarkdownGuard(faults).pass(lines), tunes, faults);
        String text = body.lines.stream().map(SourceLine::text).collect(Collectors.joining("\n"));
        for (Node node = MARKDOWN.parse(text).getFirstChild(); node != null; node = node.getNext()) {
            body.block(node);
        }
        body.closeProse();
        return body.parts;
    }

    private void block(Node node) {
        if (node instanceof FencedCodeBlock fence) {
            closeProse();
            part(fence).ifPresent(parts::add);
        } else {
            proseLine = prose.isEmpty() ? line(node).number() : proseLine;
            prose(node);
        }
    }

    private Optional<LessonPart> part(FencedCodeBlock fence) {
        return FenceText.read(fence, lines, tunes, faults);
    }

    private void closeProse() {
        if (!prose.isEmpty()) {
            parts.add(new LessonPart.ProsePart(proseLine, prose));
            prose.clear();
        }
    }

    private void prose(Node node) {
        if (node instanceof Heading heading) {
            heading(heading);
        } else if (node instanceof Paragraph) {
            prose.add(new ProseBlock.Paragraph(Inlines.of(node, lines, faults)));
        } else if (node instanceof ListBlock list) {
            list(list, 1);
        } else {
            strange(node);
        }
    }

    private void heading(Heading heading) {
        int level = heading.getLevel();
        if (level < 2 || level > 3) {
            fault(
                    heading,
                    Phrase.of("a heading with {0} #", level),
                    Phrase.of("write ## for a heading, ### for one below it"));
        }
        prose.add(new ProseBlock.Heading(level < 3 ? 2 : 3, Inlines.of(heading, lines, faults)));
    }

    private void list(ListBlock list, int depth) {
        if (depth > DEEPEST_LIST) {
            fault(
                    list,
                    Phrase.of("a list in a list in a list in a list"),
                    Phrase.of("write at most three, one in the other"));
            return;
        }
        int number = list instanceof OrderedList ordered && ordered.getMarkerStartNumber() != null
                ? ordered.getMarkerStartNumber()
                : 1;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            item(item, depth, list instanceof BulletList ? 0 : number++);
        }
    }

    private void item(Node item, int depth, int number) {
        boolean first = true;
        for (Node node = item.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof ListBlock inner) {
                list(inner, depth + 1);
            } else if (node instanceof Paragraph && first) {
                prose.add(new ProseBlock.ListItem(depth, number, Inlines.of(node, lines, faults)));
            } else if (node instanceof Paragraph) {
                fault(
                        node,
                        Phrase.of("a second paragraph in a list item"),
                        Phrase.of("write it as an item of its own or below the list"));
            } else {
                strange(node);
            }
            first = false;
        }
    }

    private void strange(Node node) {
        if (node instanceof BlockQuote) {
            fault(node, Phrase.of("a quotation is not set off"), Phrase.of("write a paragraph"));
        } else if (node instanceof ThematicBreak) {
            fault(node, Phrase.of("a rule is not drawn"), Phrase.of("write a heading, or leave it out"));
        } else if (node instanceof IndentedCodeBlock) {
            fault(
                    node,
                    Phrase.of("an indented block is not read"),
                    Phrase.of("begin the line at its edge, or write a fence with a word"));
        } else if (node instanceof FencedCodeBlock) {
            fault(
                    node,
                    Phrase.of("a block in a list or a quotation is not read"),
                    Phrase.of("write the fence at the edge, below the list"));
        } else {
            fault(node, Phrase.of("this is not read"), Phrase.of("write paragraphs, headings and lists"));
        }
    }

    private SourceLine line(Node node) {
        return lines.get(
                node.getSourceSpans().isEmpty()
                        ? 0
                        : node.getSourceSpans().get(0).getLineIndex());
    }

    private void fault(Node node, Phrase what, Phrase instead) {
        SourceLine line = line(node);
        faults.at(line.number(), line.column(line.whole().place()), what, instead);
    }
}
