package monochord.sound;

import monochord.theory.note.Beats;

/**
 * How loud a score is made from a moment on.
 *
 * @param start beats from the beginning of the score
 * @param decibels 0 for as it is, below 0 for softer; never louder
 */
public record LevelChange(Beats start, double decibels) {
    private static final int FULL = 127;
    private static final double DECIBELS_PER_DECADE = 40;

    /** @throws IllegalArgumentException if it would be louder */
    public LevelChange {
        if (!(decibels <= 0)) {
            throw new IllegalArgumentException("a level is at most 0 decibels, not " + decibels);
        }
    }

    /**
     * The value of controller 11, expression, from 1 to 127, with steps of less than a third of a decibel down to -12.
     *
     * <p>Source: General MIDI 2 Specification, MIDI Manufacturers Association, 1999: gain in decibels is 40 log (value /
     * 127); from memory, and measured on the JDK's synthesizer.
     */
    int expression() {
        return (int) Math.max(1, Math.round(FULL * Math.pow(10, decibels / DECIBELS_PER_DECADE)));
    }
}
