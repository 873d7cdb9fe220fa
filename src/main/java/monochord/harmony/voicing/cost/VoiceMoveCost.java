package monochord.harmony.voicing.cost;

import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** What one voice pays for its own way from one chord to the next, whatever the others do. */
final class VoiceMoveCost {
    /** The place of a voice among the others. */
    enum Place {
        BASS,
        INNER,
        TOP
    }

    private static final int FREE_IN_THE_BASS = 7;
    private static final int FREE_ABOVE = 4;
    private static final int WHOLE_STEP = 2;
    private static final int FALL_TO_THE_FIFTH = -4;
    private static final int AUGMENTED = 6;
    private static final int CHROMATIC_STEP = 7;
    private static final int NO_TONE = -1;

    private final ChordTones from;
    private final ChordTones to;
    private final int leading;

    VoiceMoveCost(ChordTones from, ChordTones to, Key key) {
        this.from = from;
        this.to = to;
        this.leading = leading(key);
    }

    /**
     * The tone of the first chord that has to rise, or −1: the third of a major chord or the root of a diminished one,
     * if it lies a half step under the tonic, or is from outside the key or the third of a seventh chord and lies a half
     * step under the root of the next chord. Nothing has to rise into a chord that holds it already.
     */
    private int leading(Key key) {
        Chord chord = from.chord();
        boolean major = chord.kind().holds(Interval.MAJOR_THIRD);
        boolean diminished =
                chord.kind().holds(Interval.MINOR_THIRD) && chord.kind().holds(Interval.DIMINISHED_FIFTH);
        NoteName tone = major ? chord.root().plus(Interval.MAJOR_THIRD) : chord.root();
        NoteName goal = tone.plus(Interval.MINOR_SECOND);
        boolean seventh = major && chord.kind().holds(Interval.MINOR_SEVENTH);
        boolean applied = goal.equals(to.chord().root()) && (seventh || diminished || !key.holds(tone));
        boolean leads = (major || diminished)
                && (goal.equals(key.tonic()) || applied)
                && to.chord().holds(goal)
                && !to.chord().holds(tone);
        int number = from.at(tone.pitchClass());
        return leads && number >= 0 ? number : NO_TONE;
    }

    /** Whether a top voice that moves so far leaps into a hidden fifth or octave; a whole step does not. */
    static boolean isLeap(int halfSteps) {
        return Math.abs(halfSteps) > WHOLE_STEP;
    }

    /** Half steps beyond what a voice in that place goes without being called a leap. */
    static int leap(Place place, int halfSteps) {
        return Math.max(0, Math.abs(halfSteps) - (place == Place.BASS ? FREE_IN_THE_BASS : FREE_ABOVE));
    }

    /** Whether a tone that wants to go on does not go where it wants. */
    boolean isUnresolved(Place place, int tone, int halfSteps) {
        if (tone < 0) {
            return false;
        } else if (tone == leading) {
            return halfSteps != 1 && !(place == Place.INNER && halfSteps == FALL_TO_THE_FIFTH);
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
