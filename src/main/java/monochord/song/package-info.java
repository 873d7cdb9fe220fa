/**
 * A song: its tune, its chords, its words, and how they are read from files.
 *
 * <p>Imports {@code theory}, {@code harmony} and {@code text}.
 */
package monochord.song;
