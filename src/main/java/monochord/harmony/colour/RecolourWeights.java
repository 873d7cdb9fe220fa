package monochord.harmony.colour;

/**
 * What counts how much in {@link Recolour}, where the formula stands. What an idiom is worth by itself is said where it is
 * declared. Common practice, no source.
 */
final class RecolourWeights {
    /** A line of half steps through the chord before, what is changed and the chord behind. */
    static final int LINE = 2;
    /** Each tone more, or less, that can be held from the chord before or to the one behind. */
    static final int KEPT = 1;
    /** At most so many tones count. */
    static final int MOST_KEPT = 2;
    /** The bass goes on by a half step where it did not. */
    static final int BASS = 1;
    /** The same chords for the second time. */
    static final int SECOND_TIME = 2;
    /** For the first time, where they come again. */
    static final int FIRST_TIME = 4;
    /** In the later half of the row. */
    static final int LATE = 1;
    /** The first chord, which says where the song is. */
    static final int FIRST_CHORD = 6;
    /** A chord that lasts less than a beat. */
    static final int HURRIED = 2;
    /** Any change: the band has to learn it. */
    static final int CHANGE = 4;
    /** Each unit by which clashes with the tune weigh more, or less. */
    static final int CLASH = 1;
    /** So many units of a beat or more that rubs, though it passes for an embellishment, count as one. */
    static final int RUBS_FOR_ONE = 2;
    /** In the list of ideas, behind a better one for the very same chords. */
    static final int SAME_CHORDS = 3;
    /** Behind a better one that touches some of them, and behind one of the same name. */
    static final int ALIKE = 1;
    /** An idea that counts less is no lift. */
    static final int LEAST = 3;
    /** In a combination, any change; nothing where boldness is asked for. */
    static final int ONE_MORE = 5;
    /** In a combination, a change that begins within {@value #NEAR} chords of the last one's end. */
    static final int CROWDED = 6;

    /** The same where boldness is asked for. */
    static final int CROWDED_BOLDLY = 2;

    static final int NEAR = 3;
    /** In a combination, the same idiom twice running. */
    static final int AGAIN = 3;

    private RecolourWeights() {}
}
