package monochord.harmony.after;

import monochord.theory.Chord;
import monochord.theory.Degree;
import monochord.theory.Interval;
import monochord.theory.Key;
import monochord.theory.Numeral;

/**
 * What a chord does in its key.
 *
 * <p>Source: Open Music Theory (Shaffer, Hughes, Moseley, 2014), page "harmonicFunctions", CC BY-SA 4.0; for the borrowed
 * chords Integrated Music Theory (open university course text), lesson 16a.
 */
public enum Function {
    TONIC("T"),
    SUBDOMINANT("S"),
    DOMINANT("D"),
    /** A minor chord on the fifth or a major one on the lowered third: a colour, with no pull of its own. */
    COLOUR("colour");

    private final String label;

    Function(String label) {
        this.label = label;
    }

    public static Function of(Chord chord, Key key) {
        Numeral numeral = Numeral.of(chord, key);
        if (numeral.target() != null) {
            return DOMINANT;
        }
        boolean leadingNote = chord.holds(key.note(Degree.of(7, 0)));
        Degree root = key.degreeOf(chord.root());
        boolean own = key.holds(chord.root());
        return switch (root.number()) {
            case 1 -> TONIC;
            case 3 -> own ? TONIC : COLOUR;
            case 6 -> own && (!key.isMinor() || root.alteration() < 0) ? TONIC : SUBDOMINANT;
            case 5 -> leadingNote || chord.kind().holds(Interval.PERFECT_FOURTH) ? DOMINANT : COLOUR;
            case 7 -> leadingNote ? DOMINANT : SUBDOMINANT;
            default -> SUBDOMINANT;
        };
    }

    /** Whether {@code next} follows in the round tonic, subdominant, dominant, tonic. */
    boolean leadsTo(Function next) {
        return switch (this) {
            case TONIC -> next == SUBDOMINANT || next == DOMINANT;
            case SUBDOMINANT -> next == DOMINANT || next == TONIC;
            case DOMINANT -> next == TONIC;
            case COLOUR -> false;
        };
    }

    /** {@code T}, {@code S}, {@code D}, {@code colour}. */
    @Override
    public String toString() {
        return label;
    }
}
