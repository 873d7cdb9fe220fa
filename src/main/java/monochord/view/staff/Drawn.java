package monochord.view.staff;

import monochord.text.Phrase;

/** One thing on paper. {@code meaning} is its class in a page: {@code note Eb4}, {@code ledger}, {@code clef}. */
public sealed interface Drawn {
    String meaning();

    /** The same thing elsewhere. */
    Drawn moved(double right, double down);

    /**
     * A printed sign at a point.
     *
     * @param words what it says to whoever cannot see it
     * @param tall how many times as tall as it is printed: 1, but for a brace
     */
    record Sign(String meaning, Phrase words, MusicSign sign, double x, double y, double tall) implements Drawn {
        Sign(String meaning, Phrase words, MusicSign sign, double x, double y) {
            this(meaning, words, sign, x, y, 1);
        }

        @Override
        public Sign moved(double right, double down) {
            return new Sign(meaning, words, sign, x + right, y + down, tall);
        }

        /** How many times as wide as it is printed: a taller brace grows wider, too, at half the rate. */
        double wide() {
            return 1 + (tall - 1) / 2;
        }

        Box box() {
            return sign.box().moved(x, y);
        }
    }

    /** A straight line, upright or level, with flat ends. */
    record Line(String meaning, Box box) implements Drawn {
        @Override
        public Line moved(double right, double down) {
            return new Line(meaning, box.moved(right, down));
        }
    }

    /** Text that begins at {@code x} and stands on the height {@code y}. */
    record Words(String meaning, Phrase text, double x, double y) implements Drawn {
        /** Its height from the feet of one line to those of the next. */
        static final double SIZE = 2;

        @Override
        public Words moved(double right, double down) {
            return new Words(meaning, text, x + right, y + down);
        }
    }
}
