/**
 * A score made to sound: live through the JDK's synthesizer and a bank of our own, as a WAV file, as a MIDI file; all of it
 * equally loud.
 *
 * <p>A {@link monochord.sound.Performance} says how a score is played and becomes a {@code javax.sound.midi.Sequence};
 * {@link monochord.sound.play.Player} plays it behind the prompt, {@link monochord.sound.file.WavFile} and {@link
 * monochord.sound.file.MidiFile} write it down. {@link monochord.sound.HearingCaution} is what to tell people who listen.
 *
 * <p>May import {@code theory} and {@code score}. Nothing of {@code javax.sound} is loaded until something is to sound.
 */
package monochord.sound;
