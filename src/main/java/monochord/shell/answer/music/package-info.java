/**
 * What is answered about music: chords, keys, progressions, voicings, and the pictures of them.
 *
 * <p>Imports {@code answer} and the rooms whose values it shows.
 */
package monochord.shell.answer.music;
