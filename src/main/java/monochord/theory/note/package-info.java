/**
 * Note names, signs, degrees, intervals, pitches and lengths, and how they are read: what chords and keys are made of.
 *
 * <p>Imports nothing but the JDK.
 */
package monochord.theory.note;
