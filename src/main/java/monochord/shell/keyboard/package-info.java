/**
 * Playing at a MIDI keyboard beside the line: what is held is shown and named, and questions can be answered with the
 * fingers.
 *
 * <p>{@code Gestures} turns keys into gestures, {@code Spelling} gives them letters, {@code PlayedAnswer} makes a line of
 * them, and {@code MidiSession} keeps all this on one thread of its own.
 *
 * <p>Part of the shell room. Imports {@code sitting}, on whose board it draws, {@code sound.keyboard}, and the rooms of theory
 * and practice.
 */
package monochord.shell.keyboard;
