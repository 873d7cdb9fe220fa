package monochord.view.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.KeyboardRange;
import monochord.view.keyboard.MarkedKey;

/**
 * A drawing as SVG: the keyboard, a mark on each key that is held with the name of its note, the role of the tone beyond
 * the key. What the right hand holds is round, what the left hand holds is square. A reader that cannot see it is told
 * every key in words.
 */
public final class KeyboardDrawn {
    private static final int WHITE_WIDTH = 26;
    private static final int WHITE_HEIGHT = 92;
    private static final int BLACK_WIDTH = 18;
    private static final int BLACK_HEIGHT = 56;
    private static final int ABOVE = 20;
    private static final int BELOW = 20;
    private static final int RADIUS = 11;

    private final Drawing drawing;
    private final Reader reader;
    private final int low;
    private final int high;

    private KeyboardDrawn(Drawing drawing, KeyboardRange range, Reader reader) {
        this.drawing = drawing;
        this.reader = reader;
        this.low = range.low();
        this.high = range.high();
    }

    /** A figure with the caption under it; where nothing is marked, of two octaves. */
    public static Html.Element of(Drawing drawing, Reader reader) {
        return of(drawing, KeyboardRange.around(List.of(drawing)), reader);
    }

    /** The same between two keys, so that keyboards can be compared. */
    public static Html.Element of(Drawing drawing, KeyboardRange range, Reader reader) {
        return Html.element("figure")
                .holding(new KeyboardDrawn(drawing, range, reader).svg())
                .holding(Html.element("figcaption")
                        .holding(drawing.caption().in(reader).plain()));
    }

    private Html.Element svg() {
        int width = x(high) + WHITE_WIDTH;
        int height = ABOVE + WHITE_HEIGHT + BELOW;
        List<Html> parts = new ArrayList<>();
        parts.add(Html.element("title").holding(words()));
        keys(false).forEach(parts::add);
        keys(true).forEach(parts::add);
        drawing.left().forEach(mark -> parts.addAll(mark(mark, true)));
        drawing.right().forEach(mark -> parts.addAll(mark(mark, false)));
        return Html.element("svg")
                .with("class", "keys")
                .with("role", "img")
                .with("aria-label", words())
                .with("viewBox", "-1 0 " + (width + 2) + " " + height)
                .with("width", Integer.toString(width + 2))
                .with("height", Integer.toString(height))
                .holding(parts);
    }

    private List<Html> keys(boolean black) {
        return IntStream.rangeClosed(low, high)
                .filter(key -> KeyboardRange.isBlack(key) == black)
                .mapToObj(key -> (Html)
                        rectangle(x(key), ABOVE, black ? BLACK_WIDTH : WHITE_WIDTH, black ? BLACK_HEIGHT : WHITE_HEIGHT)
                                .with("class", black ? "black" : "white"))
                .toList();
    }

    /** The left edge of a key. */
    private int x(int key) {
        int white = (int) IntStream.range(low, KeyboardRange.isBlack(key) ? key - 1 : key)
                .filter(below -> !KeyboardRange.isBlack(below))
                .count();
        return white * WHITE_WIDTH + (KeyboardRange.isBlack(key) ? WHITE_WIDTH - BLACK_WIDTH / 2 : 0);
    }

    private List<Html> mark(MarkedKey mark, boolean left) {
        boolean black = KeyboardRange.isBlack(mark.key());
        int middle = x(mark.key()) + (black ? BLACK_WIDTH : WHITE_WIDTH) / 2;
        int height = ABOVE + (black ? BLACK_HEIGHT : WHITE_HEIGHT) - RADIUS - 3;
        String role =
                "tone " + mark.role().style().name().toLowerCase(Locale.ROOT).replace('_', '-');
        Html.Element shape = left
                ? rectangle(middle - RADIUS, height - RADIUS, 2 * RADIUS, 2 * RADIUS)
                : Html.element("circle")
                        .with("cx", Integer.toString(middle))
                        .with("cy", Integer.toString(height))
                        .with("r", Integer.toString(RADIUS));
        String name = mark.pitch().name().write(reader.signs());
        int beyond = black ? ABOVE - 6 : ABOVE + WHITE_HEIGHT + 14;
        return List.of(
                shape.with("class", role),
                written(name, middle, height + 4, role + " name"),
                written(mark.role().label().in(reader).plain(), middle, beyond, "role"));
    }

    private static Html.Element rectangle(int x, int y, int width, int height) {
        return Html.element("rect")
                .with("x", Integer.toString(x))
                .with("y", Integer.toString(y))
                .with("width", Integer.toString(width))
                .with("height", Integer.toString(height));
    }

    private static Html written(String text, int x, int y, String kind) {
        return Html.element("text")
                .with("class", kind)
                .with("x", Integer.toString(x))
                .with("y", Integer.toString(y))
                .holding(text);
    }

    /** {@code IV F on a keyboard: F4 root, A4 third, C5 5.} */
    private String words() {
        Phrase right = words(drawing.right());
        Phrase hands = drawing.left().isEmpty()
                ? right
                : Phrase.of("left hand {0}; right hand {1}", words(drawing.left()), right);
        return Phrase.of("{0} on a keyboard: {1}.", drawing.caption(), hands)
                .in(reader)
                .plain();
    }

    private static Phrase words(List<MarkedKey> marks) {
        return Phrase.joined(
                ", ",
                marks.stream()
                        .map(mark ->
                                Phrase.of("{0}", mark.pitch()).then(mark.role().words()))
                        .toList());
    }
}
