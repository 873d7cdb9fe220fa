package monochord.harmony.voicing.cost;

/**
 * What a row of voicings costs. Less is better; each part is already weighed, and the whole is their sum:
 *
 * <pre>
 * cost = motion       1 for each half step that a voice moves
 *      + leaps        2 for each half step beyond a major third; in the bass beyond a fifth
 *      + parallels   10 for each pair of voices in parallel octaves or fifths, 5 if by contrary motion;
 *                     3 between the two voices of a spread left hand
 *      + lost         4 for each tone common to two chords that no voice holds
 *      + unresolved   6 for each leading note that does not rise, each seventh or suspended fourth
 *                     that neither stays nor falls by step; 20 in a choir
 *      + rough        2 for each hidden fifth or octave of the outer voices with a leap on top, each diminished fifth
 *                     above the bass that opens to a perfect one, each voice that passes where its
 *                     neighbour has just been, each augmented step
 *      + mud          2 for each half step by which an interval lies nearer than 3 half steps to its low limit
 *      + thickness    2 for a fifth doubled or left out, 6 for a third doubled, 4 more for a tone three times
 * </pre>
 *
 * In a choir each parallel and each rough spot costs 1000. Voices are joined in their order from the bass up. Where two
 * rows cost the same, the one whose bass and top stay nearer to the middle of their ranges is taken; that does not count
 * here.
 *
 * <p>Rules for parallels, hidden and unequal fifths, overlaps and augmented steps: Integrated Music Theory, lessons 10a and
 * 10b; Open Music Theory (2014), "firstSpecies" and "intervals". Leading notes and sevenths: Open Music Theory,
 * "tendencyTonesFunctionalDissonances"; Integrated Music Theory, lesson 11b. Holding common tones and moving the rest the
 * shortest way: Open Music Theory, "bassoContinuo". The weights: common practice, no source.
 */
public record Cost(int motion, int leaps, int parallels, int lost, int unresolved, int rough, int mud, int thickness) {
    /** Half steps above its low limit from which on an interval is called clear. */
    static final int CLEAR = 3;

    public static final Cost NOTHING = new Cost(0, 0, 0, 0, 0, 0, 0, 0);

    public int total() {
        return motion + leaps + parallels + lost + unresolved + rough + mud + thickness;
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
                thickness + other.thickness);
    }
}
