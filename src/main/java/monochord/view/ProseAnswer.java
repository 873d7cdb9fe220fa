package monochord.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import monochord.lesson.Block;
import monochord.lesson.Span;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;

/**
 * A stretch of a lesson's prose.
 *
 * @param fill fills in what depends on the learner's key
 */
public record ProseAnswer(List<Block> blocks, UnaryOperator<String> fill) implements Answer {
    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        Block before = null;
        for (Block block : blocks) {
            if (before != null && !(before instanceof Block.Item && block instanceof Block.Item)) {
                text.gap();
            }
            text.line(line(block));
            before = block;
        }
        return text.build().in(look.signs()).wrapped(look.width());
    }

    private StyledLine line(Block block) {
        if (block instanceof Block.Heading) {
            return StyledLine.of(words(block), Style.HEADING);
        }
        List<monochord.text.Span> spans = new ArrayList<>();
        if (block instanceof Block.Item item) {
            spans.add(new monochord.text.Span(mark(item)));
        }
        block.spans().forEach(span -> spans.add(new monochord.text.Span(fill.apply(span.text()), style(span))));
        return new StyledLine(spans);
    }

    private String words(Block block) {
        StringBuilder words = new StringBuilder();
        block.spans().forEach(span -> words.append(fill.apply(span.text())));
        return words.toString();
    }

    private static String mark(Block.Item item) {
        String indent = "  ".repeat(item.depth() - 1);
        return indent + (item.number() == 0 ? "- " : item.number() + ". ");
    }

    private static Style style(Span span) {
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
