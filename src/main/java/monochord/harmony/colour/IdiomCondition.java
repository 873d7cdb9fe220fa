package monochord.harmony.colour;

/** What an idiom asks of the place where it is to stand, besides the chords around it. */
enum IdiomCondition {
    /** What is changed lasts a bar of four beats or more. */
    A_BAR,
    /** Two bars or more. */
    TWO_BARS,
    /** The chords beside may have another bass than their root; elsewhere the reason would not hold of them. */
    ANY_BASS,
    /** More than half of the row's chords have a seventh. */
    AMONG_SEVENTHS,
    /** The suspended fourth is a tone of the chord before. */
    PREPARED,
    /** Not the last chord of a row that ends. */
    NOT_LAST
}
