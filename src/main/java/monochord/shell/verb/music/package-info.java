/**
 * The verbs that compute something about music: its keys, chords, borrowings, tunes and voicings.
 *
 * <p>Imports {@code sentence}, {@code sitting}, {@code answer} and any other room; of the verbs only those that sound.
 */
package monochord.shell.verb.music;
