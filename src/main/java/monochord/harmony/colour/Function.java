package monochord.harmony.colour;

import java.util.EnumSet;
import java.util.Set;
import monochord.theory.Degree;

/**
 * What a chord does in its key: rest, leave home, or lead back.
 *
 * <p>Source for the three and for the key's own chords: Open Music Theory (2014), page "harmonicFunctions", CC BY-SA 4.0;
 * for the borrowed ones, Integrated Music Theory, lesson 16a, CC BY-NC-SA 4.0: ♭VI as predominant and as deceptive goal,
 * ♭VII as subtonic dominant and as subdominant, ♭II as predominant, v without a dominant's function.
 */
enum Function {
    TONIC,
    PREDOMINANT,
    DOMINANT;

    static Set<Function> of(Shade shade) {
        Degree root = shade.root;
        return switch (root.number()) {
            case 1, 3 -> EnumSet.of(TONIC);
            case 2, 4 -> EnumSet.of(PREDOMINANT);
            case 5 -> shade.hasMinorThird() ? EnumSet.noneOf(Function.class) : EnumSet.of(DOMINANT);
            case 6 -> EnumSet.of(TONIC, PREDOMINANT);
            default -> root.alteration() < 0 ? EnumSet.of(DOMINANT, PREDOMINANT) : EnumSet.of(DOMINANT);
        };
    }

    static boolean isKept(Shade from, Shade to) {
        if (from.root.equals(to.root) && to.colour != Colour.BORROWED) {
            return true;
        }
        Set<Function> kept = of(from);
        kept.retainAll(of(to));
        return !kept.isEmpty();
    }
}
