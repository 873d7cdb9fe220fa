package monochord.harmony.voicing;

import monochord.harmony.voicing.cost.ChordTones;
import monochord.harmony.voicing.cost.LowIntervalLimits;

/**
 * Where the voices of a style may lie, and which hand plays them. Voices are numbered from 0, the bass.
 *
 * <p>At the keyboard the left hand stays between C2 and C4 with the bass not above E3, the right between E3 and G5
 * (common practice, no source). The choir's ranges are bass E2–D4, tenor C3–G4, alto G3–D5 and soprano C4–G5, no more
 * than an octave between neighbours but for tenor and bass (Integrated Music Theory, lesson 10a).
 */
record Layout(VoicingStyle style, int voices, Reach reach) {
    private static final int MOST_IN_A_HAND = 5;
    private static final int FEWEST = 3;
    private static final int C2 = 36;
    private static final int E3 = 52;
    private static final int C4 = 60;
    private static final int G5 = 79;
    private static final int[] CHOIR_LOW = {40, 48, 55, 60};
    private static final int[] CHOIR_HIGH = {62, 67, 74, 79};
    private static final int[] HOME_OF_THE_CHOIR = {48, 72};
    private static final int[] HOME_OF_THE_HANDS = {43, 67};

    /** Most voices that two hands could hold in this style. */
    static int mostVoices(VoicingStyle style) {
        return style == VoicingStyle.CHOIR ? CHOIR_LOW.length : leftVoices(style) + MOST_IN_A_HAND;
    }

    static int fewestVoices(VoicingStyle style) {
        return style == VoicingStyle.CHOIR ? CHOIR_LOW.length : FEWEST;
    }

    static int leftVoices(VoicingStyle style) {
        return style == VoicingStyle.SPREAD || style == VoicingStyle.CHOIR ? 2 : 1;
    }

    int lowest(int voice) {
        return style == VoicingStyle.CHOIR ? CHOIR_LOW[voice] : voice < leftVoices(style) ? C2 : E3;
    }

    int highest(int voice) {
        return style == VoicingStyle.CHOIR ? CHOIR_HIGH[voice] : voice == 0 ? E3 : voice < leftVoices(style) ? C4 : G5;
    }

    /** Whether the voice, now on its key, fits what lies below it. */
    boolean fits(int[] keys, int voice) {
        if (voice == 0) {
            return true;
        }
        boolean far = style == VoicingStyle.CHOIR
                ? voice > 1 && keys[voice] - keys[voice - 1] > 12
                : voice > leftVoices(style) && !rightReaches(keys[voice] - keys[leftVoices(style)]);
        return !far && lowLimitsAreKept(keys, voice);
    }

    private boolean rightReaches(int halfSteps) {
        return reach.covers(halfSteps) && !(style == VoicingStyle.CLOSE && Reach.isWide(halfSteps));
    }

    private static boolean lowLimitsAreKept(int[] keys, int voice) {
        for (int lower = 0; lower < voice; lower++) {
            if (!LowIntervalLimits.areKept(keys[lower], keys[voice])) {
                return false;
            }
        }
        return true;
    }

    /** Whether the left hand of this style holds these keys on these tones; asked of a whole voicing. */
    boolean holds(int[] keys, ChordTones tones) {
        return switch (style) {
            case CLOSE, SHELL -> true;
            case SPREAD -> reach.covers(keys[1] - keys[0]) && isOpen(keys[1] - keys[0], tones, keys);
            case CHOIR -> leftHand(keys) > 0;
        };
    }

    /** Root and fifth or root and tenth; over another bass, or where a chord has neither, anything from a fifth up. */
    private static boolean isOpen(int halfSteps, ChordTones tones, int[] keys) {
        int second = 1 << tones.at(keys[1]);
        boolean onRoot = tones.at(keys[0]) == 0;
        boolean tenth = halfSteps > 12 && (second & tones.third()) != 0;
        return onRoot && tones.fifths() != 0
                ? tenth || halfSteps < 12 && (second & tones.fifths()) != 0
                : halfSteps >= 6;
    }

    /** How many of the voices the left hand plays; 0 if two hands cannot play them. */
    int leftHand(int[] keys) {
        if (style != VoicingStyle.CHOIR) {
            return leftVoices(style);
        }
        boolean two = reach.covers(keys[1] - keys[0]) && reach.covers(keys[3] - keys[2]);
        return two ? 2 : reach.covers(keys[3] - keys[1]) ? 1 : 0;
    }

    /** Half steps that bass and top lie away from the middle of their ranges; decides where all else is equal. */
    int drift(int[] keys) {
        int[] home = style == VoicingStyle.CHOIR ? HOME_OF_THE_CHOIR : HOME_OF_THE_HANDS;
        return Math.abs(keys[0] - home[0]) + Math.abs(keys[voices - 1] - home[1]);
    }
}
