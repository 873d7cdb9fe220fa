package monochord.view.drawn;

import java.util.List;
import java.util.stream.IntStream;
import monochord.text.Phrase;

/** One thing on paper. {@code meaning} is its class in a page: {@code note Eb4}, {@code ledger}, {@code clef}. */
public sealed interface Drawn {
    String meaning();

    /** The same thing, made larger or smaller from the point 0, 0, and then moved. */
    Drawn placed(double scale, double right, double down);

    /** The same thing elsewhere. */
    default Drawn moved(double right, double down) {
        return placed(1, right, down);
    }

    /**
     * A printed sign at a point.
     *
     * @param words what it says to whoever cannot see it
     * @param size how long a staff space of it is
     * @param tall how many times as tall as it is printed: 1, but for a brace
     */
    record Sign(String meaning, Phrase words, MusicSign sign, double x, double y, double size, double tall)
            implements Drawn {
        /** As large as the staff that it belongs to. */
        public Sign(String meaning, Phrase words, MusicSign sign, double x, double y) {
            this(meaning, words, sign, x, y, 1, 1);
        }

        @Override
        public Sign placed(double scale, double right, double down) {
            return new Sign(meaning, words, sign, x * scale + right, y * scale + down, size * scale, tall);
        }

        /** How many times as wide as it is printed: a taller brace grows wider, too, at half the rate. */
        public double wide() {
            return 1 + (tall - 1) / 2;
        }

        /** Around its outline, where it is as tall as printed. */
        public Box box() {
            return sign.box().placed(size, x, y);
        }
    }

    /** A straight line, upright or level, with flat ends. */
    record Line(String meaning, Box box) implements Drawn {
        @Override
        public Line placed(double scale, double right, double down) {
            return new Line(meaning, box.placed(scale, right, down));
        }
    }

    /**
     * Text that begins at {@code x} and stands on the height {@code y}.
     *
     * @param size from the feet of one line to those of the next where they stand close
     */
    record Words(String meaning, Phrase text, double x, double y, double size, Typeface face) implements Drawn {
        @Override
        public Words placed(double scale, double right, double down) {
            return new Words(meaning, text, x * scale + right, y * scale + down, size * scale, face);
        }
    }

    /**
     * An area within straight lines and curves.
     *
     * @param words what it says to whoever cannot see it, perhaps nothing
     * @param fill what it is filled with
     * @param border how thick a black line around it is; 0 for none
     */
    record Area(String meaning, Phrase words, List<Stroke> outline, Ink fill, double border) implements Drawn {
        public Area {
            outline = List.copyOf(outline);
        }

        @Override
        public Area placed(double scale, double right, double down) {
            return new Area(
                    meaning,
                    words,
                    outline.stream()
                            .map(stroke -> stroke.placed(scale, right, down))
                            .toList(),
                    fill,
                    border * scale);
        }

        /** Around all its points, those that curves bend to included. */
        public Box box() {
            return outline.stream().map(Stroke::box).reduce(Box::around).orElseThrow();
        }
    }

    /** What an area is filled with. */
    enum Ink {
        BLACK,
        GREY,
        WHITE
    }

    /** One step of an outline: to a point, straight on or in a curve; the first says where it begins. */
    record Stroke(List<Double> numbers) {
        private static final int CURVE = 6;

        /** @throws IllegalArgumentException unless it has two numbers, or six for a curve */
        public Stroke {
            numbers = List.copyOf(numbers);
            if (numbers.size() != 2 && numbers.size() != CURVE) {
                throw new IllegalArgumentException("a stroke of " + numbers.size() + " numbers");
            }
        }

        public static Stroke to(double x, double y) {
            return new Stroke(List.of(x, y));
        }

        public boolean isCurve() {
            return numbers.size() == CURVE;
        }

        Stroke placed(double scale, double right, double down) {
            return new Stroke(IntStream.range(0, numbers.size())
                    .mapToObj(i -> numbers.get(i) * scale + (i % 2 == 0 ? right : down))
                    .toList());
        }

        Box box() {
            Box box = null;
            for (int i = 0; i < numbers.size(); i += 2) {
                Box point = new Box(numbers.get(i), numbers.get(i + 1), numbers.get(i), numbers.get(i + 1));
                box = box == null ? point : box.around(point);
            }
            return box;
        }
    }
}
