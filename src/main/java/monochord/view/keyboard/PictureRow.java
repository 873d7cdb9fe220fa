package monochord.view.keyboard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import monochord.text.Span;
import monochord.text.Style;
import monochord.text.StyledLine;

/**
 * One row of a picture: signs, each at the column of its key.
 *
 * <p>A sign covers its column. It begins there, or one column before it where it is long or would touch the sign to its
 * right; a very long one such as {@code bass 3} ends there, or stands around it.
 */
final class PictureRow {
    private static final int LONG = 5;

    private final TreeMap<Integer, Span> at = new TreeMap<>();
    private final boolean centred;

    PictureRow() {
        this(false);
    }

    /** @param centred whether a long sign stands around its column rather than end there */
    PictureRow(boolean centred) {
        this.centred = centred;
    }

    PictureRow put(int column, Span span) {
        if (!span.text().isEmpty()) {
            at.put(column, span);
        }
        return this;
    }

    /** Where each sign begins, so that no two touch; none if they cannot be kept apart. */
    Optional<TreeMap<Integer, Span>> placed() {
        TreeMap<Integer, Span> placed = new TreeMap<>();
        int next = Integer.MAX_VALUE;
        for (Map.Entry<Integer, Span> sign : at.descendingMap().entrySet()) {
            int width = sign.getValue().columns();
            int start = Math.min(start(sign.getKey(), width), next - width - 1);
            if (start < Math.min(sign.getKey() - 1, start(sign.getKey(), width))) {
                return Optional.empty();
            }
            placed.put(start, sign.getValue());
            next = start;
        }
        return Optional.of(placed);
    }

    private int start(int column, int width) {
        int before = width < 3 ? 0 : width < LONG ? 1 : centred ? width / 2 : width - 1;
        return column - before;
    }

    /** The row as text, from the column {@code from} on, with this sign where nothing stands. */
    static StyledLine draw(TreeMap<Integer, Span> placed, int from, int end, char fill) {
        List<Span> spans = new ArrayList<>();
        int column = from;
        for (Map.Entry<Integer, Span> sign : placed.entrySet()) {
            spans.add(gap(fill, sign.getKey() - column));
            spans.add(sign.getValue());
            column = sign.getKey() + sign.getValue().columns();
        }
        spans.add(gap(fill, end - column));
        return new StyledLine(spans).stripTrailing();
    }

    private static Span gap(char fill, int columns) {
        String text = Character.toString(fill).repeat(Math.max(0, columns));
        return new Span(text, fill == ' ' ? Style.PLAIN : Style.QUIET);
    }
}
