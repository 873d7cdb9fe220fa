/**
 * Skills with chords under way: moving them to another key, and finding the next one.
 *
 * <p>Imports {@code theory}, {@code harmony} and the other packages of {@code practice} but {@code practice.skill}.
 */
package monochord.practice.skill.transition;
