/**
 * A performance written to a file: MIDI, WAV, MP3.
 *
 * <p>May import {@code sound}, {@code score} and the room {@code file}.
 */
package monochord.sound.file;
