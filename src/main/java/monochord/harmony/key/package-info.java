/**
 * In which key music stands: a tune, chords, or both; where it changes key, and whether its chords go round in a loop.
 *
 * <p>What is counted in songs and tune books is handed in as a value, {@link monochord.harmony.key.KeyCounts}. Keys are
 * spelled: the places are those of the line of fifths, so G flat and F sharp are told apart by the notes.
 *
 * <p>Imports {@code theory}, {@code text} and {@code harmony}; no input or output, no state.
 */
package monochord.harmony.key;
