package monochord.theory.note;

/**
 * The number of an interval without its quality: 5 for a fifth.
 *
 * @param number from 1, the unison
 */
public record IntervalNumber(int number) {
    /** In English words with its article: {@code a fifth}, {@code an eleventh}. */
    @Override
    public String toString() {
        String name = Interval.numberInWords(number);
        return (name.startsWith("e") || name.startsWith("o") ? "an " : "a ") + name;
    }
}
