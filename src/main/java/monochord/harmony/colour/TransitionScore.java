package monochord.harmony.colour;

import monochord.theory.note.Degree;

/** What two neighbouring chords count together; see {@link Recolour} for the formula. */
final class TransitionScore {
    private static final Degree FIRST = Degree.of(1, 0);
    private static final Degree FOURTH = Degree.of(4, 0);
    private static final Degree FIFTH = Degree.of(5, 0);
    private static final Degree LOW_SIXTH = Degree.of(6, -1);
    private static final Degree LOW_SEVENTH = Degree.of(7, -1);
    private static final Degree SECOND = Degree.of(2, 0);

    private TransitionScore() {}

    static int score(ChordOption one, ChordOption next) {
        return RecolourWeights.KEPT * one.common(next)
                - (isCrowded(one, next) ? RecolourWeights.CROWDED : 0)
                + (one.bassMovesByHalfStep(next) ? RecolourWeights.BASS : 0)
                + RecolourWeights.RESOLVES * one.resolved(next)
                + (isIdiom(one, next) ? RecolourWeights.IDIOM : 0)
                + (leads(one, next) ? RecolourWeights.LEADS : 0);
    }

    /** The key's dominant and its tonic; or a dominant seventh and a chord on the root a fifth below. */
    static boolean leads(ChordOption one, ChordOption next) {
        boolean home = next.root.equals(FIRST) && one.function().isDominantOfKey() && !one.isSuspendedFourth();
        boolean elsewhere = one.isDominantSeventh() && one.fallsToFifth(next);
        return (home || elsewhere) && !next.isSuspendedFourth();
    }

    /** Too much from next door at once. */
    static boolean isCrowded(ChordOption one, ChordOption next) {
        boolean first = one.colour == Colour.BORROWED;
        boolean second = next.colour == Colour.BORROWED;
        boolean sameRoot = (first || second) && one.root.equals(next.root);
        return (first && second || sameRoot) && !isIdiom(one, next);
    }

    /**
     * The suspension that settles on its own root; iv I; ♭VI ♭VII and ♭VII I, the walk up; ♭VII IV; ii with a lowered
     * fifth to V.
     *
     * <p>Source: Open Music Theory (2014), pages "plagal" and "popRockHarmony-minor", CC BY-SA 4.0; Integrated Music
     * Theory, lesson 16a, CC BY-NC-SA 4.0, for ii° and iiø7.
     */
    static boolean isIdiom(ChordOption one, ChordOption next) {
        return settles(one, next) || isMinorPlagal(one, next) || isWalkUp(one, next) || isOther(one, next);
    }

    static boolean settles(ChordOption one, ChordOption next) {
        return one.isSuspendedFourth() && one.root.equals(next.root) && next.hasMajorThird();
    }

    static boolean isMinorPlagal(ChordOption one, ChordOption next) {
        return one.root.equals(FOURTH) && one.hasMinorThird() && next.root.equals(FIRST) && next.hasMajorThird();
    }

    static boolean isWalkUp(ChordOption one, ChordOption next) {
        boolean first = one.root.equals(LOW_SIXTH) && next.root.equals(LOW_SEVENTH);
        boolean second = one.root.equals(LOW_SEVENTH) && next.root.equals(FIRST);
        return (first || second) && one.hasMajorThird() && (next.hasMajorThird() || second);
    }

    private static boolean isOther(ChordOption one, ChordOption next) {
        boolean doublePlagal = one.root.equals(LOW_SEVENTH) && one.hasMajorThird() && next.root.equals(FOURTH);
        boolean darkSecond =
                one.root.equals(SECOND) && one.outside != 0 && one.hasMinorThird() && next.root.equals(FIFTH);
        return doublePlagal || darkSecond;
    }
}
