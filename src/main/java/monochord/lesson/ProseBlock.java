package monochord.lesson;

import java.util.List;
import java.util.stream.Collectors;

/** A block of prose. */
public sealed interface ProseBlock {
    List<TextRun> spans();

    /** Its words alone. */
    default String plain() {
        return spans().stream().map(TextRun::text).collect(Collectors.joining());
    }

    /** @param level 2 or 3, the number of {@code #} before it */
    record Heading(int level, List<TextRun> spans) implements ProseBlock {
        public Heading {
            spans = List.copyOf(spans);
        }
    }

    record Paragraph(List<TextRun> spans) implements ProseBlock {
        public Paragraph {
            spans = List.copyOf(spans);
        }
    }

    /**
     * A list item.
     *
     * @param depth 1 for an item of an outer list, 2 and 3 for lists within
     * @param number what stands before an item of a numbered list, 0 in a list of bullets
     */
    record ListItem(int depth, int number, List<TextRun> spans) implements ProseBlock {
        public ListItem {
            spans = List.copyOf(spans);
        }
    }
}
