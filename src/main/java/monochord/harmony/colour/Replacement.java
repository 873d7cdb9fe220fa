package monochord.harmony.colour;

import java.util.Optional;
import java.util.Set;
import monochord.harmony.ChordFunction;
import monochord.harmony.HarmonicFunction;
import monochord.theory.note.Degree;

/**
 * Why a borrowed chord may stand in the place of another, by what both do there.
 *
 * <p>Source: what each chord does is said by {@link ChordFunction}; the others, Integrated Music Theory, lesson 16a, CC
 * BY-NC-SA 4.0: ♭VI as deceptive goal, ♭VII as subtonic dominant, ♭III as a colour.
 */
enum Replacement {
    /** Both do the same there. */
    SAME_FUNCTION,
    /** In the place of a chord applied to the dominant that follows: it prepares that too, though not as its dominant. */
    BEFORE_DOMINANT,
    /** Behind a dominant, where the tonic is expected. */
    DECEPTIVE,
    /** ♭VII in the place of a dominant, with no leading note to pull it home. */
    WITHOUT_LEADING_NOTE,
    /** The third degree lowered, in the place of the chord on the third: a colour, which does nothing of its own. */
    LOWERED_THIRD;

    private static final Degree TONIC = Degree.of(1, 0);
    private static final Degree THIRD = Degree.of(3, 0);
    private static final Degree LOWERED_THIRD_DEGREE = Degree.of(3, -1);
    private static final Degree LOWERED_SEVENTH = Degree.of(7, -1);

    /**
     * @param before what the chord before does, or null
     * @param next what the chord behind does, or null
     * @return empty if the one does nothing of what the other did
     */
    static Optional<Replacement> of(ChordOption plain, ChordOption borrowed, ChordFunction before, ChordFunction next) {
        ChordFunction from = plain.function();
        ChordFunction to = borrowed.function();
        Set<HarmonicFunction> kept = from.between(before, next);
        kept.retainAll(to.between(before, next));
        if (from.root().equals(TONIC) && !to.root().equals(TONIC)) {
            boolean expected = kept.contains(HarmonicFunction.TONIC);
            return expected && before != null && before.isDominantOfKey() ? Optional.of(DECEPTIVE) : Optional.empty();
        } else if (!kept.isEmpty() && !kept.contains(HarmonicFunction.COLOUR)) {
            return Optional.of(from.goal() == null ? SAME_FUNCTION : BEFORE_DOMINANT);
        } else if (from.isDominantOfKey() && to.root().equals(LOWERED_SEVENTH) && borrowed.hasMajorThird()) {
            return Optional.of(WITHOUT_LEADING_NOTE);
        }
        boolean lowered = from.root().equals(THIRD) && to.root().equals(LOWERED_THIRD_DEGREE);
        return lowered ? Optional.of(LOWERED_THIRD) : Optional.empty();
    }
}
