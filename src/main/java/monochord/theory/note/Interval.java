package monochord.theory.note;

import java.util.List;

/**
 * An interval: so many fifths and so many octaves. Adding intervals adds both numbers, so a spelling is never lost.
 *
 * <p>Intervals point up or down. They are equal when they are spelled alike: an augmented fourth does not equal a
 * diminished fifth, though both have six half steps.
 *
 * <p>Text form: {@code ['-'] quality number}, such as {@code m3}, {@code P5}, {@code AA4} or {@code -M10}, with the
 * qualities {@code dd d m P M A AA}. {@link #parse} reads all that {@link #toString} writes, and words too: {@code minor
 * third}.
 *
 * @param fifths steps along the line of fifths; this alone says which letter and accidental are reached
 * @param octaves octaves added to those fifths
 */
public record Interval(int fifths, int octaves) implements Comparable<Interval> {
    public static final Interval UNISON = new Interval(0, 0);
    public static final Interval MINOR_SECOND = new Interval(-5, 3);
    public static final Interval MAJOR_SECOND = new Interval(2, -1);
    public static final Interval MINOR_THIRD = new Interval(-3, 2);
    public static final Interval MAJOR_THIRD = new Interval(4, -2);
    public static final Interval PERFECT_FOURTH = new Interval(-1, 1);
    public static final Interval AUGMENTED_FOURTH = new Interval(6, -3);
    public static final Interval DIMINISHED_FIFTH = new Interval(-6, 4);
    public static final Interval PERFECT_FIFTH = new Interval(1, 0);
    public static final Interval AUGMENTED_FIFTH = new Interval(8, -4);
    public static final Interval MINOR_SIXTH = new Interval(-4, 3);
    public static final Interval MAJOR_SIXTH = new Interval(3, -1);
    public static final Interval DIMINISHED_SEVENTH = new Interval(-9, 6);
    public static final Interval MINOR_SEVENTH = new Interval(-2, 2);
    public static final Interval MAJOR_SEVENTH = new Interval(5, -2);
    public static final Interval OCTAVE = new Interval(0, 1);

    private static final int STEPS_PER_OCTAVE = 7;
    private static final int HALF_STEPS_PER_OCTAVE = 12;
    private static final int LARGEST_NUMBER = 99;
    private static final List<String> NUMBERS = List.of(
            "unison",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "octave",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth",
            "thirteenth",
            "fourteenth",
            "fifteenth");

    /** The interval with these fifths that spans less than an octave in letters: from a unison up to a seventh. */
    public static Interval simple(int fifths) {
        return new Interval(fifths, -Math.floorDiv(4 * fifths, STEPS_PER_OCTAVE));
    }

    /** @throws Unreadable if the text is not an interval */
    public static Interval parse(String text) {
        return IntervalText.parse(text);
    }

    /**
     * @param number 1 for a unison, 8 for an octave, 10 for a tenth
     * @param alteration half steps above the perfect or major interval of that number
     */
    public static Interval of(int number, int alteration) {
        Interval natural =
                simple(Degree.of((number - 1) % STEPS_PER_OCTAVE + 1, 0).fifths());
        int wholeOctaves = (number - 1) / STEPS_PER_OCTAVE;
        return new Interval(natural.fifths + 7 * alteration, natural.octaves - 4 * alteration + wholeOctaves);
    }

    /** Letters moved, counted from 0: 2 for a third up, −2 for a third down. */
    public int staffSteps() {
        return 4 * fifths + STEPS_PER_OCTAVE * octaves;
    }

    /** Half steps moved, negative when the interval goes down. */
    public int semitones() {
        return 7 * fifths + HALF_STEPS_PER_OCTAVE * octaves;
    }

    public Interval plus(Interval other) {
        return new Interval(fifths + other.fifths, octaves + other.octaves);
    }

    public Interval minus(Interval other) {
        return new Interval(fifths - other.fifths, octaves - other.octaves);
    }

    /** The same interval in the other direction. */
    public Interval reversed() {
        return new Interval(-fifths, -octaves);
    }

    /** Whether the upper note, by letter and then by sound, lies below the lower one. */
    public boolean goesDown() {
        return staffSteps() < 0 || staffSteps() == 0 && semitones() < 0;
    }

    /** The same interval going up. */
    public Interval size() {
        return goesDown() ? reversed() : this;
    }

    /** The interval without its octaves, from a unison to a seventh going up; an octave becomes a unison. */
    public Interval withinOctave() {
        return simple(size().fifths);
    }

    /**
     * What is left to the octave: a third becomes a sixth, a unison an octave. Numbers add up to nine, half steps to
     * twelve. A compound interval is inverted without its octaves.
     */
    public Interval inverted() {
        return OCTAVE.minus(size().staffSteps() == STEPS_PER_OCTAVE ? size() : withinOctave());
    }

    /** The count of letters, both ends included: 1 for a unison, 3 for a third, whichever way it goes. */
    public int number() {
        return Math.abs(staffSteps()) + 1;
    }

    /** Half steps above the perfect or major interval of this number; −1 for minor or for a diminished fifth. */
    public int alteration() {
        return Degree.ofFifths(size().fifths).alteration();
    }

    /** Whether the number is one that has perfect intervals: unison, fourth, fifth and their octaves. */
    boolean isPerfectKind() {
        int natural = Math.floorMod(size().fifths + 1, 7) - 1;
        return natural <= 1;
    }

    /** {@code P}, {@code M}, {@code m}, and one {@code A} or {@code d} for each time it is augmented or diminished. */
    public String quality() {
        int alteration = alteration();
        if (alteration > 0) {
            return "A".repeat(alteration);
        }
        if (isPerfectKind()) {
            return alteration == 0 ? "P" : "d".repeat(-alteration);
        }
        return alteration == 0 ? "M" : alteration == -1 ? "m" : "d".repeat(-alteration - 1);
    }

    /** In words: {@code minor third}, {@code doubly augmented fourth}; the direction is left out. */
    public String inWords() {
        return IntervalText.qualityInWords(quality()) + " " + numberInWords(number());
    }

    /** The number alone, in words: {@code third}, {@code thirteenth}. */
    public String numberInWords() {
        return numberInWords(number());
    }

    static String numberInWords(int number) {
        return number <= NUMBERS.size() ? NUMBERS.get(number - 1) : number + "th";
    }

    static int numberFromWord(String word) {
        return NUMBERS.indexOf(word) + 1;
    }

    // The methods a record is given are slow to link, and this one is asked on the way to the first answer.
    @Override
    public boolean equals(Object other) {
        return other instanceof Interval that && that.fifths == fifths && that.octaves == octaves;
    }

    @Override
    public int hashCode() {
        return 31 * fifths + octaves;
    }

    /** By letters first, then by half steps: the order of the notes on a staff. */
    @Override
    public int compareTo(Interval other) {
        int bySteps = Integer.compare(staffSteps(), other.staffSteps());
        return bySteps != 0 ? bySteps : Integer.compare(semitones(), other.semitones());
    }

    @Override
    public String toString() {
        return (goesDown() ? "-" : "") + quality() + number();
    }

    static int largestNumber() {
        return LARGEST_NUMBER;
    }
}
