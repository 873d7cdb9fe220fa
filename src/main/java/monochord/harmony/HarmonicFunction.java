package monochord.harmony;

import monochord.text.Phrase;

/**
 * What a chord does in its key: rest, lead away, lead home, or none of these.
 *
 * <p>Source: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "harmonicFunctions", CC BY-SA 4.0, whose round is
 * tonic, subdominant (also called predominant), dominant, tonic. Which chord does what: {@link ChordFunction}.
 */
public enum HarmonicFunction {
    TONIC("T"),
    SUBDOMINANT("S"),
    DOMINANT("D"),
    /** No pull of its own. */
    COLOUR("colour");

    private final String label;

    HarmonicFunction(String label) {
        this.label = label;
    }

    /** Whether {@code next} follows in the round tonic, subdominant, dominant, tonic. */
    public boolean leadsTo(HarmonicFunction next) {
        return switch (this) {
            case TONIC -> next == SUBDOMINANT || next == DOMINANT;
            case SUBDOMINANT -> next == DOMINANT || next == TONIC;
            case DOMINANT -> next == TONIC;
            case COLOUR -> false;
        };
    }

    /** {@code T}, {@code S}, {@code D}, {@code colour}, as a reader has it. */
    public Phrase label() {
        return switch (this) {
            case TONIC -> Phrase.of("T");
            case SUBDOMINANT -> Phrase.of("S");
            case DOMINANT -> Phrase.of("D");
            case COLOUR -> Phrase.of("colour");
        };
    }

    /** {@code T}, {@code S}, {@code D}, {@code colour}. */
    @Override
    public String toString() {
        return label;
    }
}
