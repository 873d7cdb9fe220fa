package monochord.harmony.voicing.cost;

import monochord.theory.note.Pitch;

/**
 * Where the voices of a style lie well. They may lie outside; each half step there has its price.
 *
 * @param lowest the range of the lowest voice
 * @param second of the voice above it, a choir's tenor
 * @param inner of the others
 * @param top of the highest voice
 * @param closing the highest bass under the last chord that lies low enough to close with
 */
public record Comfort(Range lowest, Range second, Range inner, Range top, int closing) {
    private static final int NOWHERE_TOO_HIGH = 127;
    private static final Range ANYWHERE = new Range(0, NOWHERE_TOO_HIGH);
    private static final int CLOSING = Pitch.parse("C3").midiNumber();

    /**
     * A range of keys, as MIDI note numbers.
     *
     * @param low the lowest, included
     * @param high the highest, included
     */
    public record Range(int low, int high) {
        static Range of(String low, String high) {
            return new Range(Pitch.parse(low).midiNumber(), Pitch.parse(high).midiNumber());
        }

        /** Half steps by which a key lies outside. */
        int outside(int key) {
            return Math.max(0, Math.max(low - key, key - high));
        }
    }

    /** At the keyboard with the bass in the left hand. Common practice, no source. */
    public static final Comfort HANDS =
            new Comfort(Range.of("E2", "C3"), ANYWHERE, ANYWHERE, Range.of("D4", "E5"), CLOSING);

    /** The same with room for a tune above. Common practice, no source. */
    public static final Comfort UNDER_A_TUNE =
            new Comfort(Range.of("F2", "D3"), ANYWHERE, ANYWHERE, Range.of("E3", "F5"), CLOSING + 2);

    /** At the keyboard above a bass player: about middle C. Common practice, no source. */
    public static final Comfort ABOVE_A_BASS =
            new Comfort(Range.of("D3", "B3"), ANYWHERE, ANYWHERE, Range.of("D4", "E5"), NOWHERE_TOO_HIGH);

    /**
     * In a choir of volunteers. Between the limits of Integrated Music Theory, lesson 10a, and what choristers say of
     * themselves: common practice.
     */
    public static final Comfort CHOIR = new Comfort(
            Range.of("F2", "C4"), Range.of("C3", "F4"), Range.of("G3", "C5"), Range.of("C4", "F5"), CLOSING);

    /** Half steps by which all voices together lie outside. */
    int outside(int[] keys) {
        int sum = lowest.outside(keys[0]) + top.outside(keys[keys.length - 1]);
        for (int voice = 1; voice < keys.length - 1; voice++) {
            sum += (voice == 1 ? second : inner).outside(keys[voice]);
        }
        return sum;
    }

    /** Half steps by which the lowest voice lies too high to close. */
    int tooHighToClose(int[] keys) {
        return Math.max(0, keys[0] - closing);
    }
}
