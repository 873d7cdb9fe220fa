/**
 * Skills with the fuller chords: sevenths, suspensions, added tones, inversions and applied dominants.
 *
 * <p>Imports {@code theory}, {@code harmony} and the other packages of {@code practice} but {@code practice.skill}.
 */
package monochord.practice.skill.chord;
