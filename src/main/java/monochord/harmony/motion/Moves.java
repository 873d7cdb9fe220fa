package monochord.harmony.motion;

import java.util.Arrays;
import java.util.List;
import monochord.theory.Chord;
import monochord.theory.NoteName;

/** How near two chords lie to each other, whatever their octaves. */
public final class Moves {
    private static final int OCTAVE = 12;
    private static final int UNREACHED = 1_000_000;
    private static final int MOST_NOTES = 12;

    private Moves() {}

    /**
     * Half steps that the voices move in all between two chords in closest position, each tone by the shorter way round
     * the octave; see {@link #least(List, List)}. A bass note from outside the chord does not count.
     *
     * <p>Source: the figures of Integrated Music Theory (open university course text), lesson 19b, for triads.
     */
    public static int least(Chord from, Chord to) {
        return least(from.tones(), to.tones());
    }

    /**
     * The least movement over all ways to join the tones. Tones are joined one to one; where one chord has more, each of
     * its tones is joined to one of the thinner chord and none of those is left out.
     *
     * @param from one to twelve names
     * @param to one to twelve names
     * @throws IllegalArgumentException if there are fewer or more names
     */
    public static int least(List<NoteName> from, List<NoteName> to) {
        List<NoteName> full = from.size() >= to.size() ? from : to;
        List<NoteName> thin = full == from ? to : from;
        if (thin.isEmpty() || full.size() > MOST_NOTES) {
            throw new IllegalArgumentException("a chord has 1 to " + MOST_NOTES + " notes, not " + from + ", " + to);
        }
        return join(full, thin);
    }

    /** Goes through the fuller chord tone by tone; what counts is which tones of the thinner one are joined so far. */
    private static int join(List<NoteName> full, List<NoteName> thin) {
        int all = (1 << thin.size()) - 1;
        int[] least = new int[all + 1];
        Arrays.fill(least, 1, least.length, UNREACHED);
        for (NoteName tone : full) {
            int[] next = new int[all + 1];
            Arrays.fill(next, UNREACHED);
            for (int joined = 0; joined <= all; joined++) {
                extend(least[joined], next, joined, tone, thin);
            }
            least = next;
        }
        return least[all];
    }

    private static void extend(int sofar, int[] next, int joined, NoteName tone, List<NoteName> thin) {
        for (int j = 0; j < thin.size() && sofar < UNREACHED; j++) {
            int reached = joined | 1 << j;
            next[reached] = Math.min(next[reached], sofar + distance(tone, thin.get(j)));
        }
    }

    private static int distance(NoteName one, NoteName other) {
        int up = Math.floorMod(other.pitchClass() - one.pitchClass(), OCTAVE);
        return Math.min(up, OCTAVE - up);
    }
}
