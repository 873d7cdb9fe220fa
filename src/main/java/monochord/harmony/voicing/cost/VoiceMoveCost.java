package monochord.harmony.voicing.cost;

import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** What one voice pays for its own way from one chord to the next, whatever the others do. */
final class VoiceMoveCost {
    /** The place of a voice among the others. */
    enum VoicePlace {
        BASS,
        INNER,
        TOP
    }

    private static final int FREE_IN_THE_BASS = 7;
    private static final int FREE_ABOVE = 4;
    private static final int FOURTH = 5;
    private static final int TRITONE = 6;
    private static final int OCTAVE = 12;
    private static final int WHOLE_STEP = 2;
    private static final int FALL_TO_THE_FIFTH = -4;
    private static final int AUGMENTED = 6;
    private static final int CHROMATIC_STEP = 7;
    private static final int NO_TONE = ChordTones.NONE;

    private final ChordTones from;
    private final ChordTones to;
    private final int leading;

    VoiceMoveCost(ChordTones from, ChordTones to, Key key) {
        this.from = from;
        this.to = to;
        this.leading = leading(key);
    }

    /**
     * The tone of the first chord that has to rise, or −1: the leading note of the key where it leads, and in any key the
     * third of a dominant seventh chord or the root of a diminished one that lies a half step under the root of the next
     * chord. Nothing has to rise into a chord that holds it already.
     */
    private int leading(Key key) {
        int number = from.leading();
        if (number == ChordTones.NONE) {
            return NO_TONE;
        }
        NoteName tone = from.name(number);
        NoteName goal = tone.plus(Interval.MINOR_SECOND);
        boolean applied = goal.equals(to.chord().root())
                && (number == 0 || from.chord().kind().holds(Interval.MINOR_SEVENTH));
        boolean leads = goal.equals(key.tonic()) || applied;
        return leads && to.chord().holds(goal) && !to.chord().holds(tone) ? number : NO_TONE;
    }

    /** Whether a top voice that moves so far leaps into a hidden fifth or octave; a whole step does not. */
    static boolean isLeap(int halfSteps) {
        return Math.abs(halfSteps) > WHOLE_STEP;
    }

    /** Half steps beyond what a voice in that place goes without being called a leap; a bass may change its octave. */
    static int leap(VoicePlace place, int halfSteps) {
        int moved = Math.abs(halfSteps);
        boolean bass = place == VoicePlace.BASS;
        return bass && moved == OCTAVE ? 0 : Math.max(0, moved - (bass ? FREE_IN_THE_BASS : FREE_ABOVE));
    }

    /**
     * Half steps to be paid for: the bass goes a fifth at the price of a fourth, for either way it reaches the same root, and
     * an octave at that of a tritone.
     */
    static int motion(VoicePlace place, int halfSteps) {
        int moved = Math.abs(halfSteps);
        if (place == VoicePlace.BASS && moved == OCTAVE) {
            return TRITONE;
        }
        return place == VoicePlace.BASS && moved == FREE_IN_THE_BASS ? FOURTH : moved;
    }

    /** Half steps beyond a whole step in the top voice, which is heard as a tune. */
    static int line(VoicePlace place, int halfSteps) {
        return place == VoicePlace.TOP ? Math.max(0, Math.abs(halfSteps) - WHOLE_STEP) : 0;
    }

    /** Whether a tone that wants to go on does not go where it wants. */
    boolean isUnresolved(VoicePlace place, int tone, int halfSteps) {
        if (tone < 0) {
            return false;
        } else if (tone == leading) {
            return halfSteps != 1 && !(place == VoicePlace.INNER && halfSteps == FALL_TO_THE_FIFTH);
        }
        boolean dissonant = (from.dissonances() & 1 << tone) != 0 && !to.chord().holds(from.name(tone));
        return dissonant && halfSteps != 0 && halfSteps != -1 && halfSteps != -2;
    }

    /** Whether the voice goes by an augmented interval; a step between two forms of one letter is none. */
    boolean isAugmented(int tone, int nextTone, int halfSteps) {
        if (tone < 0 || nextTone < 0) {
            return false;
        }
        int fifths = (to.name(nextTone).fifths() - from.name(tone).fifths()) * Integer.signum(halfSteps);
        return fifths >= AUGMENTED && fifths != CHROMATIC_STEP;
    }
}
