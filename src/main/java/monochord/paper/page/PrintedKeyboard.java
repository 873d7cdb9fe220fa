package monochord.paper.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.view.drawn.Box;
import monochord.view.drawn.Drawn;
import monochord.view.drawn.Picture;
import monochord.view.drawn.Typeface;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.KeyboardRange;
import monochord.view.keyboard.MarkedKey;

/**
 * A keyboard for paper, in black and white: on each key that is held a mark with the name of its note, round for the right
 * hand, square for the left; the root's is black. With no mark it is one to write on, of two octaves.
 */
public final class PrintedKeyboard {
    private static final double WHITE = 3.9;
    private static final double WHITE_LONG = 13.5;
    private static final double BLACK = 2.6;
    private static final double BLACK_LONG = 8.2;
    private static final double RADIUS = 1.75;
    private static final double BORDER = 0.2;
    private static final double LETTERS = 2.5;
    private static final double ROLE_ROOM = 3.4;
    /** How far from its ends the handles of a quarter of a circle stand, as a share of the radius. */
    private static final double HANDLE = 0.5523;

    private final Drawing drawing;
    private final Reader reader;
    private final int low;
    private final int high;
    private final List<Drawn> things = new ArrayList<>();

    private PrintedKeyboard(Drawing drawing, int low, int high, Reader reader) {
        this.drawing = drawing;
        this.reader = reader;
        this.low = low;
        this.high = high;
    }

    /** As far as its marks reach. */
    public static Picture of(Drawing drawing, Reader reader) {
        KeyboardRange range = KeyboardRange.around(List.of(drawing));
        return of(drawing, range.low(), range.high(), reader);
    }

    /** Between two white keys, so that keyboards can be compared. */
    public static Picture of(Drawing drawing, int low, int high, Reader reader) {
        return new PrintedKeyboard(drawing, low, high, reader).picture();
    }

    private Picture picture() {
        keys(false);
        keys(true);
        drawing.left().forEach(mark -> mark(mark, true));
        drawing.right().forEach(mark -> mark(mark, false));
        return new Picture(things, x(high) + WHITE, ROLE_ROOM + WHITE_LONG + ROLE_ROOM);
    }

    private void keys(boolean black) {
        for (int key = low; key <= high; key++) {
            if (KeyboardRange.isBlack(key) == black) {
                double x = x(key);
                Box box = new Box(
                        x, ROLE_ROOM, x + (black ? BLACK : WHITE), ROLE_ROOM + (black ? BLACK_LONG : WHITE_LONG));
                things.add(new Drawn.Area(
                        black ? "black" : "white",
                        Phrase.NOTHING,
                        corners(box),
                        black ? Drawn.Ink.GREY : Drawn.Ink.WHITE,
                        BORDER));
            }
        }
    }

    private static List<Drawn.Stroke> corners(Box box) {
        return List.of(
                Drawn.Stroke.to(box.left(), box.top()),
                Drawn.Stroke.to(box.right(), box.top()),
                Drawn.Stroke.to(box.right(), box.bottom()),
                Drawn.Stroke.to(box.left(), box.bottom()));
    }

    private double x(int key) {
        boolean black = KeyboardRange.isBlack(key);
        long white = IntStream.range(low, black ? key - 1 : key)
                .filter(below -> !KeyboardRange.isBlack(below))
                .count();
        return white * WHITE + (black ? WHITE - BLACK / 2 : 0);
    }

    private void mark(MarkedKey mark, boolean left) {
        boolean black = KeyboardRange.isBlack(mark.key());
        double middle = x(mark.key()) + (black ? BLACK : WHITE) / 2;
        double height = ROLE_ROOM + (black ? BLACK_LONG : WHITE_LONG) - RADIUS - 0.4;
        boolean root = mark.role().style() == Style.ROOT;
        Phrase words = Phrase.of("{0}", mark.pitch()).then(mark.role().words());
        Box around = new Box(middle - RADIUS, height - RADIUS, middle + RADIUS, height + RADIUS);
        things.add(new Drawn.Area(
                "mark " + mark.pitch(),
                words,
                left ? corners(around) : circle(middle, height),
                Drawn.Ink.WHITE,
                root ? 3 * BORDER : BORDER));
        written("name", Phrase.of("{0}", mark.pitch().name()), middle, height + LETTERS * 0.36, root);
        double beyond = black ? ROLE_ROOM - 0.9 : ROLE_ROOM + WHITE_LONG + 2.6;
        written("role", mark.role().label(), middle, beyond, false);
    }

    /** Set around a middle, and smaller where it would be wider than its key. */
    private void written(String kind, Phrase phrase, double middle, double y, boolean bold) {
        String text = phrase.in(reader).plain();
        if (!text.isEmpty()) {
            Typeface face = bold ? Typeface.BOLD : Typeface.REGULAR;
            double wide = face.width(text) * LETTERS;
            double size = LETTERS * Math.min(1, (kind.equals("name") ? 2 * RADIUS - 0.5 : 2.4 * RADIUS) / wide);
            things.add(new Drawn.Words(kind, phrase, middle - face.width(text) * size / 2, y, size, face));
        }
    }

    private static List<Drawn.Stroke> circle(double x, double y) {
        double r = RADIUS;
        double h = RADIUS * HANDLE;
        return List.of(
                Drawn.Stroke.to(x - r, y),
                new Drawn.Stroke(List.of(x - r, y - h, x - h, y - r, x, y - r)),
                new Drawn.Stroke(List.of(x + h, y - r, x + r, y - h, x + r, y)),
                new Drawn.Stroke(List.of(x + r, y + h, x + h, y + r, x, y + r)),
                new Drawn.Stroke(List.of(x - h, y + r, x - r, y + h, x - r, y)));
    }
}
