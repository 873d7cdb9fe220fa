/**
 * What several skills say at the keyboard: the walk to a degree, the stack of a chord, the key's own chords.
 *
 * <p>Imports {@code text} and {@code theory}.
 */
package monochord.practice.teaching;
