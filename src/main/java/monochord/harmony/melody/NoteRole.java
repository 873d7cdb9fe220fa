package monochord.harmony.melody;

import monochord.text.Phrase;

/**
 * What a note of a tune does over its chord.
 *
 * <p>Source for the embellishing tones: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "embellishingTones", CC
 * BY-SA 4.0. When a colour may be rested on and when it clashes: common practice, no source.
 */
public enum NoteRole {
    CHORD_TONE(Phrase.of("chord tone")),
    /** A colour that is heard as part of the chord. */
    TENSION(Phrase.of("tension")),
    /** Reached by step and left by step the same way, where it is not exposed. */
    PASSING(Phrase.of("passing")),
    /** A step away from a note and back to it, where it is not exposed. */
    NEIGHBOUR(Phrase.of("neighbour")),
    /** Held or struck again from before, then it moves by step into the chord. */
    SUSPENSION(Phrase.of("suspension")),
    /** The next chord's tone, a little early. */
    ANTICIPATION(Phrase.of("anticipation")),
    /** Reached by step and left by a leap the other way. */
    ESCAPE(Phrase.of("escape")),
    /** Reached by a leap and left by step: a note that leans on the next. */
    APPOGGIATURA(Phrase.of("appoggiatura")),
    CLASH(Phrase.of("clash")),
    /** No chord has begun under it. */
    FREE(Phrase.of("free"));

    private final Phrase words;

    NoteRole(Phrase words) {
        this.words = words;
    }

    public Phrase inWords() {
        return words;
    }

    @Override
    public String toString() {
        return words.toString();
    }
}
