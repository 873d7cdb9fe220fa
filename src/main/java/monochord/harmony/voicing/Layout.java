package monochord.harmony.voicing;

import monochord.harmony.voicing.cost.LowIntervalLimits;

/**
 * Where the voices of a style may lie, and which hand plays them. Voices are numbered from 0, the lowest.
 *
 * <p>With the bass at the keyboard the left hand stays between C2 and C4 with the bass not above E3, the right between E3
 * and G5; above a bass player the left hand stays between A2 and G4 (common practice, no source). The choir's ranges are
 * bass E2–D4, tenor C3–G4, alto G3–D5 and soprano C4–G5, no more than an octave between neighbours but for tenor and bass
 * (Integrated Music Theory, lesson 10a).
 */
record Layout(VoicingStyle style, int voices, Reach reach) {
    private static final int MOST_IN_A_HAND = 5;
    private static final int FEWEST = 3;
    private static final int WITHIN_AN_OCTAVE = 4;
    private static final int OCTAVE = 12;
    private static final int ELEVENTH = 17;
    private static final int DIMINISHED_FIFTH = 6;
    private static final int C2 = 36;
    private static final int A2 = 45;
    private static final int C3 = 48;
    private static final int E3 = 52;
    private static final int G3 = 55;
    private static final int C4 = 60;
    private static final int E4 = 64;
    private static final int G4 = 67;
    private static final int G5 = 79;
    private static final int[] CHOIR_LOW = {40, 48, 55, 60};
    private static final int[] CHOIR_HIGH = {62, 67, 74, 79};
    private static final int[] HOME_OF_THE_CHOIR = {48, 72};
    private static final int[] HOME_OF_THE_HANDS = {45, 67};
    private static final int[] HOME_ABOVE_A_BASS = {53, 65};

    static int fewestVoices(VoicingStyle style) {
        return style == VoicingStyle.CHOIR || style == VoicingStyle.DROP_TWO ? style.voices() : FEWEST;
    }

    private int left() {
        return style.leftHand(voices);
    }

    int lowest(int voice) {
        return switch (style) {
            case CHOIR -> CHOIR_LOW[voice];
            case WITH_BASS -> voice < left() ? C3 : E3;
            case DROP_TWO -> voice < left() ? A2 : E3;
            default -> voice < left() ? C2 : E3;
        };
    }

    int highest(int voice) {
        return switch (style) {
            case CHOIR -> CHOIR_HIGH[voice];
            case WITH_BASS, DROP_TWO -> voice < left() ? G4 : G5;
            case UNDER_TUNE -> voice == 0 ? G3 : voice < left() ? E4 : G5;
            default -> voice == 0 ? E3 : voice < left() ? C4 : G5;
        };
    }

    /** Whether the voice, now on its key, fits what lies below it. */
    boolean fits(int[] keys, int voice) {
        if (voice == 0) {
            return true;
        }
        boolean far = style == VoicingStyle.CHOIR
                ? voice > 1 && keys[voice] - keys[voice - 1] > OCTAVE
                : voice < left()
                        ? !reach.covers(keys[voice] - keys[0])
                        : voice > left() && !rightReaches(keys[voice] - keys[left()]);
        return !far && isInShape(keys, voice) && lowLimitsAreKept(keys, voice);
    }

    private boolean rightReaches(int halfSteps) {
        return reach.covers(halfSteps) && !(style == VoicingStyle.CLOSE && Reach.isWide(halfSteps));
    }

    /**
     * An open left hand has nothing nearer to the bass than a fifth; four notes above a bass player lie within an octave, more
     * within an eleventh; of a
     * dropped chord the lowest was second from the top.
     */
    private boolean isInShape(int[] keys, int voice) {
        return switch (style) {
            case SPREAD, ALONE -> voice != 1 || keys[1] - keys[0] >= DIMINISHED_FIFTH;
            case WITH_BASS -> keys[voice] - keys[0] <= (voices > WITHIN_AN_OCTAVE ? ELEVENTH : OCTAVE);
            case DROP_TWO ->
                switch (voice) {
                    case 2 -> keys[2] < keys[0] + OCTAVE;
                    case 3 -> keys[3] > keys[0] + OCTAVE && keys[3] - keys[1] <= OCTAVE;
                    default -> true;
                };
            default -> true;
        };
    }

    private static boolean lowLimitsAreKept(int[] keys, int voice) {
        for (int lower = 0; lower < voice; lower++) {
            if (!LowIntervalLimits.areKept(keys[lower], keys[voice])) {
                return false;
            }
        }
        return true;
    }

    /** Whether two hands hold these keys; asked of a whole voicing. */
    boolean holds(int[] keys) {
        return leftHand(keys) > 0;
    }

    /** How many of the voices the left hand plays; 0 if two hands cannot play them. */
    int leftHand(int[] keys) {
        if (style != VoicingStyle.CHOIR) {
            return voices - left() > MOST_IN_A_HAND ? 0 : left();
        }
        boolean two = reach.covers(keys[1] - keys[0]) && reach.covers(keys[3] - keys[2]);
        return two ? 2 : reach.covers(keys[3] - keys[1]) ? 1 : 0;
    }

    /** Half steps that lowest and top voice lie away from the middle of their ranges; decides where all else is equal. */
    int drift(int[] keys) {
        int[] home = switch (style) {
            case CHOIR -> HOME_OF_THE_CHOIR;
            case WITH_BASS, DROP_TWO -> HOME_ABOVE_A_BASS;
            default -> HOME_OF_THE_HANDS;
        };
        return Math.abs(keys[0] - home[0]) + Math.abs(keys[voices - 1] - home[1]);
    }
}
