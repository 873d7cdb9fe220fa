package monochord.harmony.colour;

/** In what way a chord is changed. */
public enum Colour {
    /** Not at all. */
    PLAIN("as it is"),
    BORROWED("borrowed"),
    /** Made the dominant of the next chord. */
    APPLIED("applied"),
    /** The fourth in place of the third. */
    SUSPENDED("suspended"),
    /** A seventh or ninth added. */
    ENRICHED("enriched");

    private final String words;

    Colour(String words) {
        this.words = words;
    }

    @Override
    public String toString() {
        return words;
    }
}
