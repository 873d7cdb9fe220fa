/**
 * In which key a tune lies well for a voice, and how that key reads for those who play.
 *
 * <p>Imports {@code theory} and {@code text}.
 */
package monochord.harmony.singing;
