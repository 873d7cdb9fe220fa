package monochord.harmony.colour;

/** What an idiom asks of the place where it is to stand, besides the chords around it. */
enum Place {
    /** What is changed lasts a bar of four beats or more. */
    STANDING,
    /** The suspended fourth is a tone of the chord before. */
    PREPARED,
    /** Not the last chord of a row that ends. */
    NOT_LAST
}
