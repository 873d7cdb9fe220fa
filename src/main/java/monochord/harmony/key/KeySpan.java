package monochord.harmony.key;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Key;

/**
 * Chords that stand in one key.
 *
 * @param from the first chord, from 0
 * @param to the last chord, included
 * @param pivot the chord before it that belongs to the key before and to this one, where there is one
 */
public record KeySpan(int from, int to, Key key, Optional<Chord> pivot) {}
