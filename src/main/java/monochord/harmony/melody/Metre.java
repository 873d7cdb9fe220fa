package monochord.harmony.melody;

import monochord.theory.note.Beats;

/**
 * Strong and weak beats, and what a note weighs on them.
 *
 * <p>The weight of a note is {@code strength · halves}: 4 at the start of a bar or where the chord changes, 3 on the
 * middle beat of a bar of an even number of beats from four up, 2 on any other beat, 1 between beats; times its length in
 * half beats, rounded up, at most 8. So from 1 to 32.
 *
 * <p>Common practice, no source.
 *
 * @param bar beats in a bar
 */
record Metre(Beats bar) {
    static final int START = 4;
    static final int STRONG = 3;

    private static final int BEAT = 2;
    private static final int MOST_HALVES = 8;

    /** @param time beats from the start of the first full bar */
    int strength(Beats time) {
        Beats within = within(time);
        if (within.isZero()) {
            return START;
        }
        boolean even = bar.denominator() == 1 && bar.numerator() % 2 == 0 && bar.numerator() >= 4;
        return even && within.times(2).equals(bar) ? STRONG : within.denominator() == 1 ? BEAT : 1;
    }

    /** On the beats before the first full bar. */
    int strengthBefore(Beats left) {
        Beats rest = within(left);
        return strength(rest.isZero() ? rest : bar.minus(rest));
    }

    private Beats within(Beats time) {
        long whole = time.numerator() * bar.denominator() / (time.denominator() * bar.numerator());
        return time.minus(bar.times(whole));
    }

    /** The number of the bar, from 1. */
    long barNumber(Beats time) {
        return time.numerator() * bar.denominator() / (time.denominator() * bar.numerator()) + 1;
    }

    /** The beat in its bar, from 1 for the first. */
    Beats beatNumber(Beats time) {
        return within(time).plus(Beats.ONE);
    }

    static int weight(int strength, Beats beats) {
        long halves = (2 * beats.numerator() + beats.denominator() - 1) / beats.denominator();
        return strength * (int) Math.min(MOST_HALVES, halves);
    }
}
