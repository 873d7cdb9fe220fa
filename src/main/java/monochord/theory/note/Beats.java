package monochord.theory.note;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length or a time in beats, exact: a third of a beat three times is one beat. One beat is a quarter note.
 *
 * <p>Always in lowest terms, so equal lengths are equal values. Never negative.
 *
 * <p>Text form: {@code whole} or {@code numerator/denominator}, such as {@code 2} or {@code 1/2}. {@link #parse} reads
 * all that {@link #toString} writes up to 9999 beats and 32nds of a beat.
 *
 * @param numerator zero or more
 * @param denominator one or more
 */
public record Beats(long numerator, long denominator) implements Comparable<Beats> {
    public static final Beats ZERO = new Beats(0, 1);
    public static final Beats ONE = new Beats(1, 1);

    private static final Pattern TEXT = Pattern.compile("(\\d{1,4})(?:/(\\d{1,2}))?");
    private static final int SMALLEST_PART = 32;

    /** @throws IllegalArgumentException if the numerator is below 0 or the denominator below 1 */
    public Beats {
        if (numerator < 0 || denominator < 1) {
            throw new IllegalArgumentException(
                    "beats must be at least 0, over at least 1, not " + numerator + "/" + denominator);
        }
        long shared = greatestDivisor(numerator, denominator);
        numerator /= shared;
        denominator /= shared;
    }

    /** @throws IllegalArgumentException if {@code whole} is below 0 */
    public static Beats of(long whole) {
        return new Beats(whole, 1);
    }

    /** @throws IllegalArgumentException if the numerator is below 0 or the denominator below 1 */
    public static Beats of(long numerator, long denominator) {
        return new Beats(numerator, denominator);
    }

    /** @throws Unreadable if the text is no such number, or counts in parts smaller than a 32nd of a beat */
    public static Beats parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            throw Unreadable.because(text, 0, "a length", "expected beats such as 2 or 1/2", "1/2");
        }
        int parts = matcher.group(2) == null ? 1 : Integer.parseInt(matcher.group(2));
        if (parts < 1 || parts > SMALLEST_PART) {
            Clause why = Clause.of("a beat is divided into 1 to {0} parts", SMALLEST_PART);
            throw Unreadable.because(text, matcher.start(2), "a length", why, "1/2");
        }
        return of(Long.parseLong(matcher.group(1)), parts);
    }

    /** The fewest equal parts in which both one part in {@code one} and one in {@code other} can be written. */
    public static long commonParts(long one, long other) {
        return one / greatestDivisor(one, other) * other;
    }

    private static long greatestDivisor(long a, long b) {
        return b == 0 ? a : greatestDivisor(b, a % b);
    }

    /** @throws ArithmeticException if the sum is past what two longs hold */
    public Beats plus(Beats other) {
        long shared = greatestDivisor(denominator, other.denominator);
        long mine = Math.multiplyExact(numerator, other.denominator / shared);
        long theirs = Math.multiplyExact(other.numerator, denominator / shared);
        return of(Math.addExact(mine, theirs), Math.multiplyExact(denominator, other.denominator / shared));
    }

    /** @throws IllegalArgumentException if {@code other} is longer than this */
    public Beats minus(Beats other) {
        long mine = Math.multiplyExact(numerator, other.denominator);
        long theirs = Math.multiplyExact(other.numerator, denominator);
        return of(Math.subtractExact(mine, theirs), Math.multiplyExact(denominator, other.denominator));
    }

    /** @throws IllegalArgumentException if {@code count} is below 0 */
    public Beats times(long count) {
        return of(Math.multiplyExact(numerator, count), denominator);
    }

    /** @throws IllegalArgumentException if {@code parts} is below 1 */
    public Beats dividedInto(long parts) {
        return of(numerator, Math.multiplyExact(denominator, parts));
    }

    public boolean isZero() {
        return numerator == 0;
    }

    /** The nearest whole number of ticks, halves up, when a beat has {@code perBeat} of them. */
    public long ticks(int perBeat) {
        long twice = Math.multiplyExact(2 * numerator, perBeat);
        return Math.floorDiv(twice + denominator, 2 * denominator);
    }

    public Beats longerOf(Beats other) {
        return compareTo(other) >= 0 ? this : other;
    }

    @Override
    public int compareTo(Beats other) {
        long mine = Math.multiplyExact(numerator, other.denominator);
        return Long.compare(mine, Math.multiplyExact(other.numerator, denominator));
    }

    @Override
    public String toString() {
        return denominator == 1 ? Long.toString(numerator) : numerator + "/" + denominator;
    }
}
