package monochord.harmony.key;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Key;

/**
 * Notes of a tune that stand in one key.
 *
 * @param from the first note, from 0
 * @param to the last note, included
 * @param bars which bars they fill, where the tune has bar lines
 * @param pivot a plain chord of this key and the key before that fits the bar before, where there is one
 */
public record TuneKeySpan(int from, int to, Optional<Bars> bars, Key key, Optional<Chord> pivot) {
    /** The first and the last bar, from 1; 0 is the pick-up. */
    public record Bars(int first, int last) {}

    TuneKeySpan in(Key other) {
        return new TuneKeySpan(from, to, bars, other, pivot);
    }
}
