package monochord.harmony.colour;

import monochord.text.Phrase;

/** In what way chords are changed. */
public enum Colour {
    /** Chords from the parallel minor or another mode. */
    BORROWED(Phrase.of("borrowed")),
    /** A dominant, or what stands for one, of the chord behind it. */
    APPLIED(Phrase.of("applied")),
    /** The fourth in place of the third, for a while. */
    SUSPENDED(Phrase.of("suspended")),
    /** A tone added. */
    ENRICHED(Phrase.of("enriched")),
    /** A line of half steps, or a diminished chord in passing. */
    CHROMATIC(Phrase.of("chromatic")),
    /** The same chords over another bass. */
    BASS(Phrase.of("in the bass"));

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
