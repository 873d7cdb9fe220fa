/**
 * What is answered about music: chords, keys, progressions, voicings, songs, and the pictures of them.
 *
 * <p>Imports what {@code view} may: the rooms whose values it shows.
 */
package monochord.view.music;
