package monochord.view.staff;

import monochord.theory.note.Beats;

/**
 * A value with its dots, perhaps within a tuplet.
 *
 * @param dots 0 to 2
 * @param in how many of such a value the tuplet has; 1 where there is none
 * @param inTimeOf how many of the plain value last as long
 */
public record NoteLength(NoteValue value, int dots, int in, int inTimeOf) {
    private static final int MOST_DOTS = 2;
    private static final double FREE_ROOM = 4;
    private static final double LEAST_ROOM = 1.9;
    private static final double QUARTER_ROOM = 3.2;
    private static final double DOUBLING = 1.45;

    /** @throws IllegalArgumentException if the dots are not 0 to 2, or a tuplet has no notes */
    public NoteLength {
        if (dots < 0 || dots > MOST_DOTS || in < 1 || inTimeOf < 1) {
            throw new IllegalArgumentException(dots + " dots, " + in + " in the time of " + inTimeOf);
        }
    }

    /** A plain value. */
    public static NoteLength of(NoteValue value) {
        return new NoteLength(value, 0, 1, 1);
    }

    public boolean isInTuplet() {
        return in > 1;
    }

    /** Quarters that it sounds. */
    public Beats beats() {
        Beats dotted = value.beats();
        for (int i = 1; i <= dots; i++) {
            dotted = dotted.plus(value.beats().dividedInto(1L << i));
        }
        return dotted.times(inTimeOf).dividedInto(in);
    }

    /** How far the next column stands where nothing asks for more. */
    double room() {
        return value == NoteValue.FREE ? FREE_ROOM : room(beats());
    }

    /** The same for a length: 3.2 for a quarter, 1.45 times as far for each doubling. */
    static double room(Beats length) {
        double quarters = (double) length.numerator() / length.denominator();
        return Math.max(LEAST_ROOM, QUARTER_ROOM * Math.pow(DOUBLING, Math.log(quarters) / Math.log(2)));
    }
}
