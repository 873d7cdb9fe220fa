package monochord.harmony.voicing.cost;

/**
 * What a row of voicings costs. Less is better; each part is already weighed, and the whole is their sum:
 *
 * <pre>
 * cost = motion       1 for each half step that a voice moves; the bass goes a fifth at the price of a fourth,
 *                     an octave at that of a tritone
 *      + leaps        2 for each half step beyond a major third, in the bass beyond a fifth; in the top voice 1 for
 *                     each beyond a whole step besides
 *      + parallels   10 for each pair of voices in parallel octaves or fifths, 5 if by contrary motion;
 *                     5 within an open left hand; 5 and 3 above a bass player
 *      + lost         4 for each tone common to two chords that no voice holds
 *      + unresolved   6 for each leading note that does not rise, each seventh or suspended fourth
 *                     that neither stays nor falls by step; 20 in a choir
 *      + rough        2 for each hidden fifth or octave of the outer voices with a leap on top, each diminished fifth
 *                     above the bass that opens to a perfect one, each voice that passes where its
 *                     neighbour has just been, each augmented step; 1 above a bass player
 *      + mud          2 for each half step by which an interval lies nearer than 3 half steps to its low limit
 *      + thickness    2 for a fifth doubled, 4 for one left out, 2 above a bass player; 6 for a third doubled, 2 if it
 *                     is the bass; 4 more for a tone three times; in a diminished chord 6 for the root doubled and
 *                     nothing for the third; above a bass player 12 for the root of a seventh chord, 2 if it has no
 *                     ninth, and 2 if neither third nor seventh lies lowest
 *      + register     1 for each half step that a voice lies outside its comfort, 2 for each half step that the last
 *                     bass lies too high
 *      + spacing      1 for each half step beyond two octaves between a bass alone and the right hand, beyond an octave
 *                     between fuller hands; 2 for a whole tone between the two highest voices, 4 for a half step
 *                     there and 2 elsewhere
 * </pre>
 *
 * In a choir each parallel and each rough spot costs 1000. Voices are joined in their order from the lowest up. Where two
 * rows cost the same, the one whose lowest and top voice stay nearer to the middle of their ranges is taken; that does not
 * count here.
 *
 * <p>The reasons and sources of each part stand in {@code DEVELOPERS.md}, "What a voicing costs".
 */
public record Cost(
        int motion,
        int leaps,
        int parallels,
        int lost,
        int unresolved,
        int rough,
        int mud,
        int thickness,
        int register,
        int spacing) {
    /** Half steps above its low limit from which on an interval is called clear. */
    static final int CLEAR = 3;

    public static final Cost NOTHING = new Cost(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    public int total() {
        return motion + leaps + parallels + lost + unresolved + rough + mud + thickness + register + spacing;
    }

    public Cost plus(Cost other) {
        return new Cost(
                motion + other.motion,
                leaps + other.leaps,
                parallels + other.parallels,
                lost + other.lost,
                unresolved + other.unresolved,
                rough + other.rough,
                mud + other.mud,
                thickness + other.thickness,
                register + other.register,
                spacing + other.spacing);
    }
}
