package monochord.harmony.colour;

import monochord.text.Phrase;

/** In what way a chord is changed. */
public enum Colour {
    /** Not at all. */
    PLAIN(Phrase.of("as it is")),
    BORROWED(Phrase.of("borrowed")),
    /** Made the dominant of the next chord. */
    APPLIED(Phrase.of("applied")),
    /** The fourth in place of the third. */
    SUSPENDED(Phrase.of("suspended")),
    /** A seventh or ninth added. */
    ENRICHED(Phrase.of("enriched"));

    private final Phrase words;

    Colour(Phrase words) {
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
