/** What is answered about music: chords, keys, progressions, voicings, and the pictures of them. */
package monochord.shell.answer.music;
