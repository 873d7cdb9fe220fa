package monochord.paper;

import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.KeyboardRange;
import monochord.view.staff.StaffMusic;

/**
 * Something for the class to take home, before it is put on a page: {@link HandoutWeb} makes it a page for a browser,
 * {@link HandoutPages} pages to print.
 *
 * @param opening what is said before the first section
 * @param foot what stands at the foot of each printed page, perhaps nothing
 */
public record Handout(Phrase title, List<Phrase> opening, List<HandoutSection> sections, Phrase foot) {
    /**
     * What stands under one heading, in order.
     *
     * @param heading perhaps nothing
     * @param across how many blocks stand side by side on paper
     */
    public record HandoutSection(Phrase heading, int across, List<Block> blocks) {
        public HandoutSection {
            blocks = List.copyOf(blocks);
        }
    }

    /**
     * One chord, scale or question.
     *
     * @param name perhaps nothing
     * @param lines what is said of it
     */
    public record Block(Phrase name, List<Phrase> lines, List<HandoutFigure> figures) {
        public Block {
            lines = List.copyOf(lines);
            figures = List.copyOf(figures);
        }
    }

    /** What is seen, or written on. */
    public sealed interface HandoutFigure {
        /** @param range from which key to which, or as far as the marks reach */
        record KeyboardFigure(Drawing drawing, Optional<KeyboardRange> range) implements HandoutFigure {
            public static KeyboardFigure of(Drawing drawing) {
                return new KeyboardFigure(drawing, Optional.empty());
            }
        }

        record Staff(StaffMusic music) implements HandoutFigure {}

        record Room(AnswerRoom room) implements HandoutFigure {}

        /**
         * Facts in rows and columns; the first column stands left, the others in the middle.
         *
         * @param head what stands over each column
         */
        record Rows(List<Phrase> head, List<List<Phrase>> rows) implements HandoutFigure {
            /** @throws IllegalArgumentException if a row is not as long as the head */
            public Rows {
                head = List.copyOf(head);
                rows = List.copyOf(rows);
                for (List<Phrase> row : rows) {
                    if (row.size() != head.size()) {
                        throw new IllegalArgumentException(row.size() + " cells under " + head.size() + " heads");
                    }
                }
            }
        }
    }

    public Handout {
        opening = List.copyOf(opening);
        sections = List.copyOf(sections);
    }
}
