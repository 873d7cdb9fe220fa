package monochord.harmony.voicing.cost;

import monochord.theory.note.Pitch;

/**
 * The lowest place at which an interval still sounds clear.
 *
 * <p>A trade rule, not theory, and no absolute: a table of low interval limits as music shops print it, converted to
 * middle C = C4.
 */
public final class LowIntervalLimits {
    private static final String[] LOWEST = {
        "", "E3", "Eb3", "C3", "B2", "A2", "B1", "C#2", "F2", "F2", "F2", "F2",
    };
    private static final int[] KEYS = new int[LOWEST.length];

    static {
        for (int i = 1; i < LOWEST.length; i++) {
            KEYS[i] = Pitch.parse(LOWEST[i]).midiNumber();
        }
    }

    private LowIntervalLimits() {}

    /**
     * Half steps by which the interval between two keys lies below its limit; negative where it lies above.
     *
     * @param lower a MIDI note number, not above {@code upper}
     * @param upper a MIDI note number; from an octave on there is no limit
     */
    public static int below(int lower, int upper) {
        int interval = upper - lower;
        return interval > 0 && interval < KEYS.length ? KEYS[interval] - lower : Integer.MIN_VALUE;
    }

    public static boolean areKept(int lower, int upper) {
        return below(lower, upper) <= 0;
    }
}
