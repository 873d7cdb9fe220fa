/**
 * MIDI keyboards: which are there, and what is played on one. Sounds nothing; that is the keyboard's own affair.
 *
 * <p>Part of the sound room. Imports nothing of ours.
 */
package monochord.sound.keyboard;
