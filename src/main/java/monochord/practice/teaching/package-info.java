/**
 * What several skills say at the keyboard: the walk to a degree, the stack of a chord, the key's own chords.
 *
 * <p>Imports {@code theory}, {@code harmony} and {@code practice.answer}.
 */
package monochord.practice.teaching;
