package monochord.view.staff;

import java.util.List;
import monochord.text.Phrase;
import monochord.view.drawn.Drawn;

/** A tie between two heads, or between one and the end of a line. */
final class Tie {
    private static final double APART = 0.1;
    private static final double AWAY = 0.62;
    private static final double LEAST_HEIGHT = 0.45;
    private static final double MOST_HEIGHT = 1.1;
    private static final double THICK = 0.22;

    private Tie() {}

    /**
     * @param from the right edge of the first head, or where the line begins
     * @param to the left edge of the second head, or where the line ends
     * @param y the height of both
     */
    static Drawn of(double from, double to, double y, boolean above) {
        int way = above ? -1 : 1;
        double left = from + APART;
        double right = Math.max(to - APART, left + 0.5);
        double height = Math.min(MOST_HEIGHT, LEAST_HEIGHT + 0.1 * (right - left));
        double end = y + way * AWAY;
        double outer = end + way * height;
        double inner = outer - way * THICK;
        double bend = (right - left) / 4;
        return new Drawn.Area(
                "tie",
                Phrase.of("tied"),
                List.of(
                        Drawn.Stroke.to(left, end),
                        new Drawn.Stroke(List.of(left + bend, outer, right - bend, outer, right, end)),
                        new Drawn.Stroke(List.of(right - bend, inner, left + bend, inner, left, end))),
                Drawn.Ink.BLACK,
                0);
    }
}
