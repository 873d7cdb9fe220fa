package monochord.theory.note;

import java.util.Collection;

/**
 * A set of points on the line of fifths as the bits of a number: bit 31 is the origin, the bit above it one fifth up.
 *
 * <p>A chord moves to another root by a shift, and holds a note by one test. Points from −31 to 32 have a place.
 */
public final class ToneSet {
    public static final long ROOT = bit(0);

    private static final int ORIGIN = 31;

    private ToneSet() {}

    static boolean hasPlace(int fifths) {
        return fifths >= -ORIGIN && fifths < Long.SIZE - ORIGIN;
    }

    /** The set of this one point; empty if it has no place. */
    public static long bit(int fifths) {
        return hasPlace(fifths) ? 1L << fifths + ORIGIN : 0;
    }

    /** The degree of that number counted up the major scale from the root, altered by half steps: 9 and 2 are one. */
    public static int fifths(int number, int alteration) {
        return Degree.of((number - 1) % 7 + 1, alteration).fifths();
    }

    public static long tone(int number, int alteration) {
        return bit(fifths(number, alteration));
    }

    /** The notes seen from {@code root}; empty if one of them has no place. */
    public static long seenFrom(NoteName root, Collection<NoteName> notes) {
        long set = 0;
        for (NoteName note : notes) {
            long bit = bit(note.fifths() - root.fifths());
            if (bit == 0) {
                return 0;
            }
            set |= bit;
        }
        return set;
    }

    /** The same points seen from another origin; empty if one of them has no place there. */
    public static long shifted(long set, int fifths) {
        long moved = fifths >= 0 ? set << fifths : set >>> -fifths;
        return hasPlace(fifths) && Long.bitCount(moved) == Long.bitCount(set) ? moved : 0;
    }

    /** The points from flat to sharp. */
    public static int[] fifths(long set) {
        int[] fifths = new int[Long.bitCount(set)];
        long left = set;
        for (int i = 0; i < fifths.length; i++) {
            fifths[i] = Long.numberOfTrailingZeros(left) - ORIGIN;
            left &= left - 1;
        }
        return fifths;
    }
}
