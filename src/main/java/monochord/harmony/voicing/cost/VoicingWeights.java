package monochord.harmony.voicing.cost;

/**
 * What one of each costs, in half steps of movement. Chosen by ear and by trial: common practice, no source.
 *
 * @param motion a half step of one voice
 * @param leap a half step that an upper voice goes beyond a major third, the bass beyond a fifth
 * @param parallel a pair of voices that move the same way from octave to octave or from fifth to fifth
 * @param leftParallel the same between the two voices of the left hand
 * @param contrary the same with the two moving apart or together
 * @param lost a tone that both chords have and no voice holds
 * @param unresolved a leading note that does not rise, a seventh or suspension that does not stay or fall by step
 * @param rough a hidden fifth or octave, a diminished fifth that opens, an overlap, an augmented step
 * @param mud a half step by which an interval lies nearer than {@link Cost#CLEAR} to its low limit
 * @param thick a unit of thickness: see {@link Cost}
 */
public record VoicingWeights(
        int motion,
        int leap,
        int parallel,
        int leftParallel,
        int contrary,
        int lost,
        int unresolved,
        int rough,
        int mud,
        int thick) {
    /** More than any movement of four voices, so that a choir sings a fault only where it cannot be helped. */
    private static final int FAULT = 1000;

    public static final VoicingWeights HANDS = new VoicingWeights(1, 2, 10, 10, 5, 4, 6, 2, 2, 2);
    public static final VoicingWeights SPREAD_HANDS = new VoicingWeights(1, 2, 10, 3, 5, 4, 6, 2, 2, 2);
    public static final VoicingWeights VOICES = new VoicingWeights(1, 2, FAULT, FAULT, FAULT, 4, 20, FAULT, 2, 2);
}
