/** The verbs that compute something about music: its keys, chords, borrowings, tunes and voicings. */
package monochord.shell.verb.music;
