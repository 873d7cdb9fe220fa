package monochord.harmony.voicing.cost;

/**
 * What the formula has to know of a style.
 *
 * @param comfort where its voices lie well
 * @param leftHand how many voices, from the lowest, the left hand holds; 0 where nothing hangs on the hands, as in a choir
 * @param hasBass whether the lowest voice is the bass of the chord; with a bass player it is a voice like the others
 */
public record Texture(VoicingWeights weights, Comfort comfort, int leftHand, boolean hasBass) {
    /** Half steps that may lie between a bass alone and the right hand at no price: two octaves. */
    private static final int OVER_A_BASS_ALONE = 24;

    private static final int OCTAVE = 12;

    /** Half steps that may lie between the hands at no price. */
    int freeGap() {
        return leftHand == 1 ? OVER_A_BASS_ALONE : OCTAVE;
    }
}
