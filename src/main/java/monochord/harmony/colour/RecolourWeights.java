package monochord.harmony.colour;

/** What each reason counts in the score of {@link Recolour}; the formula stands there. Common practice, no source. */
final class RecolourWeights {
    /** A tone that two neighbouring chords share, up to {@value #MOST_KEPT} of them. */
    static final int KEPT = 2;

    static final int MOST_KEPT = 2;
    /** The bass moves on by a half step. */
    static final int BASS = 3;
    /** A tone from outside the key goes on by a half step. */
    static final int RESOLVES = 1;
    /** A move that players know. */
    static final int IDIOM = 3;
    /** A dominant, and the chord a fifth below to which it leads. */
    static final int LEADS = 3;
    /** Two borrowed chords side by side, or one beside its own root, but for the moves that players know. */
    static final int CROWDED = 4;
    /** An added or suspended tone on a degree that stands firm in the key. */
    static final int STABLE = 2;
    /** A chord from a parallel scale. */
    static final int BORROWED = 3;
    /** Each degree that it changes beyond the first. */
    static final int FARTHER = 1;
    /** Any change: the band has to learn it. */
    static final int CHANGE = 4;
    /** The last chord is changed. */
    static final int END = 6;
    /** The tonic chord gives way to a chord on another root. */
    static final int HOME = 6;
    /** Each unit by which clashes with the tune weigh more. */
    static final int CLASH = 1;

    private RecolourWeights() {}
}
