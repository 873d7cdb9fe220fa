package monochord.view;

import java.util.List;
import java.util.function.Function;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;

/**
 * A stretch of a lesson's prose.
 *
 * @param fill fills in what depends on the learner's key
 */
public record ProseAnswer(List<ProseBlock> blocks, Function<String, Phrase> fill) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        ProseBlock before = null;
        for (ProseBlock block : blocks) {
            if (before != null && !(before instanceof ProseBlock.ListItem && block instanceof ProseBlock.ListItem)) {
                text.gap();
            }
            text.line(line(block, look.reader()));
            before = block;
        }
        return text.build().wrapped(look.width());
    }

    private StyledLine line(ProseBlock block, Reader reader) {
        StyledLine line = block instanceof ProseBlock.ListItem item ? StyledLine.of(mark(item)) : StyledLine.EMPTY;
        for (TextRun span : block.spans()) {
            line = line.plus(span.style() == TextRun.RunStyle.CODE ? typed(span, reader) : said(span, block, reader));
        }
        return line;
    }

    private StyledLine said(TextRun span, ProseBlock block, Reader reader) {
        Style style = block instanceof ProseBlock.Heading ? Style.HEADING : style(span);
        return fill.apply(span.text()).styled(style).in(reader);
    }

    /** A line as it would be typed: whatever in it is music goes by the reader's names. */
    private StyledLine typed(TextRun span, Reader reader) {
        String english = fill.apply(span.text()).toString();
        return StyledText.of(english, Style.TYPED).in(reader.signs()).lines().get(0);
    }

    private String words(ProseBlock block) {
        StringBuilder words = new StringBuilder();
        block.spans().forEach(span -> words.append(fill.apply(span.text())));
        return words.toString();
    }

    private static String mark(ProseBlock.ListItem item) {
        String indent = "  ".repeat(item.depth() - 1);
        return indent + (item.number() == 0 ? "- " : item.number() + ". ");
    }

    private static Style style(TextRun span) {
        return switch (span.style()) {
            case PLAIN -> Style.PLAIN;
            case EMPHASIS -> Style.EMPHASIS;
            case STRONG -> Style.STRONG;
            case CODE -> Style.TYPED;
        };
    }

    @Override
    public void json(Json json) {
        json.put("kind", "prose").put("text", blocks.stream().map(this::words).toList());
    }
}
