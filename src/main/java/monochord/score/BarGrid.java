package monochord.score;

import java.util.regex.Matcher;
import monochord.theory.note.Beats;
import monochord.theory.note.Unreadable;

/**
 * How long a bar is, what comes before the first, and what is counted in it.
 *
 * <p>Text form of the bar: {@code beats/value}, such as {@code 3/4} or {@code 6/8}; lengths of ours are always in quarters.
 *
 * @param bar quarters in a bar, more than none
 * @param pickup quarters before the first full bar
 * @param counted quarters in what is counted as one beat: one, in 6/8, 9/8 and 12/8 one and a half
 */
public record BarGrid(Beats bar, Beats pickup, Beats counted) {
    /** Four quarters, without a pick-up. */
    public static final BarGrid COMMON = new BarGrid(Beats.of(4), Beats.ZERO);

    private static final java.util.regex.Pattern TEXT = java.util.regex.Pattern.compile("([1-9][0-9]?)/([248])");
    private static final int QUARTERS_IN_A_WHOLE = 4;
    private static final int MOST = 16;
    private static final Beats DOTTED_QUARTER = Beats.of(3, 2);

    /** @throws IllegalArgumentException if a bar or its beat has no length */
    public BarGrid {
        if (bar.isZero() || counted.isZero()) {
            throw new IllegalArgumentException("a bar must have a length");
        }
    }

    /** In quarters. */
    public BarGrid(Beats bar, Beats pickup) {
        this(bar, pickup, Beats.ONE);
    }

    /** @throws Unreadable if the text is not a metre of up to sixteen quarters */
    public static BarGrid parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (matcher.matches()) {
            long beats = Long.parseLong(matcher.group(1));
            long value = Long.parseLong(matcher.group(2));
            Beats bar = Beats.of(beats * QUARTERS_IN_A_WHOLE, value);
            if (bar.compareTo(Beats.of(MOST)) <= 0) {
                return new BarGrid(bar, Beats.ZERO, isCompound(beats, value) ? DOTTED_QUARTER : Beats.ONE);
            }
        }
        throw Unreadable.because(text, 0, "a metre", "expected beats and their value such as 3/4 or 6/8", "3/4");
    }

    private static boolean isCompound(long beats, long value) {
        return value == 8 && beats > 3 && beats % 3 == 0;
    }

    public BarGrid after(Beats before) {
        return new BarGrid(bar, before, counted);
    }

    /** Whether beats fall into threes. */
    public boolean isCompound() {
        return !counted.equals(Beats.ONE);
    }

    /** Whether a bar has so many quarters, and quarters are counted. */
    public boolean hasQuarters(int count) {
        return !isCompound() && bar.equals(Beats.of(count));
    }

    /** How far into its bar a time lies, counted in beats from the first full bar. */
    public Beats within(Beats time) {
        long whole = time.numerator() * bar.denominator() / (time.denominator() * bar.numerator());
        return time.minus(bar.times(whole));
    }
}
