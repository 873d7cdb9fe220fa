/**
 * A song from plain text in which chords stand over words.
 *
 * <p>Imports what {@code song} may.
 */
package monochord.song.text;
