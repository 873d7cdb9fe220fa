package monochord.harmony.voicing.cost;

/**
 * What one of each costs, in half steps of movement. Chosen by ear and by trial, and held to a table of textbook voicings:
 * common practice, no source.
 *
 * @param motion a half step of one voice
 * @param leap a half step that an upper voice goes beyond a major third, the bass beyond a fifth
 * @param line a half step that the top voice goes beyond a whole step
 * @param parallel a pair of voices that move the same way from octave to octave or from fifth to fifth
 * @param leftParallel the same between two voices of the left hand
 * @param contrary the same with the two moving apart or together
 * @param lost a tone that both chords have and no voice holds
 * @param unresolved a leading note that does not rise, a seventh or suspension that does not stay or fall by step
 * @param rough a hidden fifth or octave, a diminished fifth that opens, an overlap, an augmented step
 * @param mud a half step by which an interval lies nearer than {@link Cost#CLEAR} to its low limit
 * @param thick a unit of thickness: see {@link Cost}
 * @param register a half step outside the {@link Comfort} of a voice; twice that for a last bass that lies too high
 * @param spacing a half step by which the hands lie too far apart; twice that for a whole tone between the two highest
 *     voices, four times for a half step there, twice elsewhere
 */
public record VoicingWeights(
        int motion,
        int leap,
        int line,
        int parallel,
        int leftParallel,
        int contrary,
        int lost,
        int unresolved,
        int rough,
        int mud,
        int thick,
        int register,
        int spacing) {
    /** More than any movement of four voices, so that a choir sings a fault only where it cannot be helped. */
    private static final int FAULT = 1000;

    public static final VoicingWeights HANDS = new VoicingWeights(1, 2, 1, 10, 10, 5, 4, 6, 2, 2, 2, 1, 1);
    /** Two notes in the left hand may go together. */
    public static final VoicingWeights OPEN_HANDS = new VoicingWeights(1, 2, 1, 10, 5, 5, 4, 6, 2, 2, 2, 1, 1);
    /** Above a bass player chords may slide a little. */
    public static final VoicingWeights ABOVE_A_BASS = new VoicingWeights(1, 2, 1, 5, 5, 3, 4, 6, 1, 2, 2, 1, 1);

    public static final VoicingWeights VOICES =
            new VoicingWeights(1, 2, 1, FAULT, FAULT, FAULT, 4, 20, FAULT, 2, 2, 1, 1);
}
