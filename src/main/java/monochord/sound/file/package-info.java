/**
 * A performance written to a file: MIDI, WAV, MP3.
 *
 * <p>May import {@code sound} and {@code score}.
 */
package monochord.sound.file;
