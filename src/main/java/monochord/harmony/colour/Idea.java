package monochord.harmony.colour;

import java.util.List;
import monochord.harmony.melody.FitNote;
import monochord.theory.Chord;
import monochord.theory.Numeral;

/**
 * One chord changed and all others left as they are.
 *
 * @param at which of the chords that are struck, from 0
 * @param score what the change adds to the score of the progression, see {@link Recolour}
 * @param reasons what adds most first
 * @param clashes the notes of the tune that would clash over the new chord, each with the nearest that would fit
 */
public record Idea(
        int at,
        Chord from,
        Numeral fromNumeral,
        Chord to,
        Numeral toNumeral,
        Colour colour,
        int score,
        List<Reason> reasons,
        List<FitNote> clashes) {
    public Idea {
        reasons = List.copyOf(reasons);
        clashes = List.copyOf(clashes);
    }
}
