package monochord.harmony.melody;

/**
 * What a note of a tune does over its chord.
 *
 * <p>Source for the embellishing tones: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "embellishingTones", CC
 * BY-SA 4.0. When a colour may be rested on and when it clashes: common practice, no source.
 */
public enum NoteRole {
    CHORD_TONE("chord tone"),
    /** A colour that is heard as part of the chord. */
    TENSION("tension"),
    /** Reached by step and left by step the same way, where it is not exposed. */
    PASSING("passing"),
    /** A step away from a note and back to it, where it is not exposed. */
    NEIGHBOUR("neighbour"),
    /** Held or struck again from before, then it moves by step into the chord. */
    SUSPENSION("suspension"),
    /** The next chord's tone, a little early. */
    ANTICIPATION("anticipation"),
    /** Reached by step and left by a leap the other way. */
    ESCAPE("escape"),
    /** Reached by a leap and left by step: a note that leans on the next. */
    APPOGGIATURA("appoggiatura"),
    CLASH("clash"),
    /** No chord has begun under it. */
    FREE("free");

    private final String words;

    NoteRole(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
