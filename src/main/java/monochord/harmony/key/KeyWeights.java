package monochord.harmony.key;

/**
 * What the pieces of evidence for a key weigh: the one place where they stand.
 *
 * <p>Those of tunes and of chords were tried on a fifth of the tunes that the collections hold, and a forerunner was
 * measured on others, of which nothing was counted; {@code CHORD_TONES} and {@code CHORD_SEVENTHS} on rows of chords drawn at random from counts
 * of a tune book. Source for the formula: profiles after C. L. Krumhansl and M. Schmuckler, as likelihoods after D.
 * Temperley, "Music and Probability" (2007), from memory; on the line of fifths and with first and last note, ours.
 */
final class KeyWeights {
    /** Times the mean logarithm over the sounding time: a tune speaks as loud as so many notes. */
    static final double TIME = 25;

    static final double FIRST_NOTE = 0.5;
    static final double LAST_NOTE = 1;

    /**
     * How much of the time the degree that tells a mode must sound for the mode to be named, else it passes by. In tune books
     * the sixth of dorian tunes sounds 5 of 100, the seventh of mixolydian ones 9; less than half of that is ours, no source.
     */
    static final double OWN_DEGREE = 0.02;

    static final double CHORDS = 6;
    static final double PAIRS = 3;
    static final double FIRST_CHORD = 0.7;
    static final double LAST_CHORD = 0.5;
    static final double CHORD_TONES = 2;
    static final double CHORD_SEVENTHS = 1;

    /** How often the first chord is the tonic's: counted in 80 songs of rock corpus 2.1, T. de Clercq and D. Temperley. */
    static final double BEGINS_ON_TONIC = 0.85;

    /** How often the last chord is: songs fade out and loops end anywhere; counted as above. */
    static final double ENDS_ON_TONIC = 0.575;

    /** That the chords of one turn have a name in textbooks in this key or its relative, in logarithms: ours, no source. */
    static final double NAMED_LOOP = 3;

    /** Fewer chords are named in one key and plain in another, as double plagal is V IV I: ours, no source. */
    static final int SHORTEST_NAMED_LOOP = 4;

    /** A tune of fewer notes, a row of fewer chords, says less: ours, no source. It softens shares and ranks nothing anew. */
    static final int FULL_TUNE = 25;

    static final int FULL_ROW = 12;

    /**
     * The price of another key from one chord to the next, in logarithms. Tried from 3 to 9.35, the price of D. Temperley,
     * "Music and Probability" (2007), from memory, on rows of one key drawn at random from counts of a tune book, of which
     * three in a hundred get a change at this price, and on rows of eight chords with one change, which it finds.
     */
    static final double CHANGE = 5;

    /** The same for sevenths where chords may change key; tried from a quarter to one. */
    static final double SPAN_SEVENTHS = 0.35;

    /** Fewer chords make no key of their own: they pass through. Ours, no source. */
    static final int FEWEST_CHORDS = 3;

    /** What a note of mean length counts where a tune may change key, in parts of the logarithm of its likelihood. */
    static final double TUNE_NOTE = 0.5;

    /**
     * The price of another key from one bar of a tune to the next, in logarithms. Tried from 5 to 8 on 161 tunes in one key,
     * of which two get a change at this price, and on nine that change, of which seven are found: {@code src/bench/shares}.
     */
    static final double TUNE_CHANGE = 8;

    private KeyWeights() {}
}
