package monochord.theory.note;

import java.util.List;

/**
 * A degree of a scale, such as the lowered sixth: a point on the line of fifths seen from the tonic.
 *
 * <p>Numbers count from the major scale, as players do: {@code 6} is the sixth of the major scale, {@code b6} the note a
 * half step below it with the same letter.
 *
 * <p>Text form: {@code { 'b' | '#' } number}, number from 1 to 7. {@link #parse} reads all that {@link #toString} writes.
 *
 * @param fifths how many fifths the degree lies above the tonic: 5 is 1, {@code b6} is −4
 */
public record Degree(int fifths) implements Notated, Comparable<Degree> {
    private static final List<String> ORDINALS =
            List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh");
    private static final List<String> NAMES =
            List.of("tonic", "supertonic", "mediant", "subdominant", "dominant", "submediant", "leading note");

    public static Degree ofFifths(int fifths) {
        return new Degree(fifths);
    }

    /**
     * @param number from 1 to 7
     * @param alteration half steps above that degree of the major scale
     * @throws IllegalArgumentException if the number is not from 1 to 7
     */
    public static Degree of(int number, int alteration) {
        if (number < 1 || number > 7) {
            throw new IllegalArgumentException("a degree must be from 1 to 7, not " + number);
        }
        return new Degree(naturalFifths(number - 1) + 7 * alteration);
    }

    /** Two fifths go one letter up, so the letter {@code steps} above the tonic is found in the window from −1 to 5. */
    private static int naturalFifths(int steps) {
        return Math.floorMod(2 * steps + 1, 7) - 1;
    }

    /** @throws Unreadable if the text is not a degree */
    public static Degree parse(String text) {
        Cursor cursor = new Cursor(text, "a degree", "b6");
        int alteration = cursor.accidentals();
        if (cursor.peek() < '1' || cursor.peek() > '7') {
            throw cursor.unexpected("a number from 1 to 7");
        }
        Degree degree = of(cursor.next() - '0', alteration);
        cursor.end();
        return degree;
    }

    /** From 1 to 7. */
    public int number() {
        return Math.floorMod(4 * fifths, 7) + 1;
    }

    /** Half steps above the same degree of the major scale. */
    public int alteration() {
        return Math.floorDiv(fifths + 1, 7);
    }

    public NoteName above(NoteName tonic) {
        return NoteName.at(tonic.fifths() + fifths);
    }

    /** The interval from the tonic up to this degree, less than an octave in letters. */
    public Interval interval() {
        return Interval.simple(fifths);
    }

    /** Half steps above the tonic. */
    public int semitones() {
        return interval().semitones();
    }

    /** {@code sixth}, {@code lowered sixth}, {@code raised fourth}, {@code doubly lowered seventh}. */
    public String inWords() {
        int alteration = alteration();
        String doubly = Math.abs(alteration) == 2 ? "doubly " : Math.abs(alteration) > 2 ? "much " : "";
        String change = alteration < 0 ? "lowered " : alteration > 0 ? "raised " : "";
        return doubly + change + ORDINALS.get(number() - 1);
    }

    /** The name of the degree in a major key: {@code tonic}, {@code dominant}; the alteration is left out. */
    public String name() {
        return NAMES.get(number() - 1);
    }

    @Override
    public int compareTo(Degree other) {
        return interval().compareTo(other.interval());
    }

    // The methods a record is given are slow to link, and this one is asked on the way to the first answer.
    @Override
    public boolean equals(Object other) {
        return other instanceof Degree that && that.fifths == fifths;
    }

    @Override
    public int hashCode() {
        return fifths;
    }

    @Override
    public String write(Signs signs) {
        return signs.accidental(alteration()) + number();
    }

    @Override
    public String toString() {
        return write(Signs.ASCII);
    }
}
