package monochord.text;

import java.util.ArrayList;
import java.util.List;

/** Breaks one line: pieces of space and word in turn, set one after the other. */
final class WrappedLine {
    private final int width;
    private final int hang;
    private final List<StyledLine> done = new ArrayList<>();
    private final List<Span> open = new ArrayList<>();
    private int used;
    private boolean holdsWord;

    WrappedLine(int width, int hang) {
        this.width = width;
        this.hang = hang;
    }

    List<StyledLine> of(StyledLine line) {
        for (StyledLine piece : Pieces.of(line)) {
            if (piece.isBlank()) {
                space(piece);
            } else {
                word(piece);
            }
        }
        done.add(taken());
        return done;
    }

    /** Spaces at a break are left out; at the very beginning they are the indent. */
    private void space(StyledLine spaces) {
        if (holdsWord) {
            append(spaces);
        } else if (done.isEmpty()) {
            append(StyledLine.of(" ".repeat(Math.min(spaces.columns(), width / 2))));
        }
    }

    private void word(StyledLine word) {
        if (used + word.columns() > width && holdsWord) {
            breakLine();
        }
        append(lastOf(word));
        holdsWord = true;
    }

    /** Sets full lines of a word that is wider than the line, each char looked at once, and leaves what fits. */
    private StyledLine lastOf(StyledLine word) {
        String text = word.plain();
        int from = 0;
        while (true) {
            int to = from + Columns.charsThatFit(text, from, Math.max(1, width - used));
            StyledLine head = Pieces.chars(word, from, to);
            if (to == text.length() && used + head.columns() <= width) {
                return head;
            }
            append(head);
            breakLine();
            from = to;
        }
    }

    private void append(StyledLine piece) {
        open.addAll(piece.spans());
        used += piece.columns();
    }

    private void breakLine() {
        done.add(taken());
        open.add(new Span(" ".repeat(hang)));
        used = hang;
        holdsWord = false;
    }

    private StyledLine taken() {
        StyledLine line = new StyledLine(open).stripTrailing();
        open.clear();
        return line;
    }
}
