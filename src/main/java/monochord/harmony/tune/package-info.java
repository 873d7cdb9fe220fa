/**
 * Chords under a bare tune: the plain chords that carry it best, found by exact search, each place with other offers and
 * reasons; and every chord that carries one note.
 *
 * <p>What is counted in songs is handed in as a value, {@link monochord.harmony.key.ChordTable}.
 *
 * <p>Imports {@code theory}, {@code text} and {@code harmony}; no input or output, no state.
 */
package monochord.harmony.tune;
