package monochord.harmony;

import monochord.theory.Chord;
import monochord.theory.Numeral;

/**
 * One chord in a bar.
 *
 * @param numeral the chord as it was read or as the key names it
 * @param shares how many shares of its bar it lasts, at least 1
 * @param held whether it goes on from the slot before without being struck again
 */
public record ChordEvent(Chord chord, Numeral numeral, int shares, boolean held) {
    ChordEvent longer() {
        return new ChordEvent(chord, numeral, shares + 1, held);
    }
}
