package monochord.score;

import java.util.regex.Matcher;
import monochord.theory.note.Beats;
import monochord.theory.note.Unreadable;

/**
 * How long a bar is, and what comes before the first.
 *
 * <p>Text form of the bar: {@code beats/value}, such as {@code 3/4} or {@code 6/8}; a beat of ours is always a quarter.
 *
 * @param bar beats in a bar, more than none
 * @param pickup beats before the first full bar
 */
public record BarGrid(Beats bar, Beats pickup) {
    /** Four quarters, without a pick-up. */
    public static final BarGrid COMMON = new BarGrid(Beats.of(4), Beats.ZERO);

    private static final java.util.regex.Pattern TEXT = java.util.regex.Pattern.compile("([1-9][0-9]?)/([248])");
    private static final int QUARTERS_IN_A_WHOLE = 4;
    private static final int MOST = 16;

    /** @throws IllegalArgumentException if a bar has no length */
    public BarGrid {
        if (bar.isZero()) {
            throw new IllegalArgumentException("a bar must have a length");
        }
    }

    /** @throws Unreadable if the text is not a metre of up to sixteen quarters */
    public static BarGrid parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (matcher.matches()) {
            Beats bar =
                    Beats.of(Long.parseLong(matcher.group(1)) * QUARTERS_IN_A_WHOLE, Long.parseLong(matcher.group(2)));
            if (bar.compareTo(Beats.of(MOST)) <= 0) {
                return new BarGrid(bar, Beats.ZERO);
            }
        }
        throw Unreadable.because(text, 0, "a metre", "expected beats and their value such as 3/4 or 6/8", "3/4");
    }

    public BarGrid after(Beats before) {
        return new BarGrid(bar, before);
    }

    /** How far into its bar a time lies, counted in beats from the first full bar. */
    public Beats within(Beats time) {
        long whole = time.numerator() * bar.denominator() / (time.denominator() * bar.numerator());
        return time.minus(bar.times(whole));
    }
}
