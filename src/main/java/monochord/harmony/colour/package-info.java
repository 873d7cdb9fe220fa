/**
 * Where a plain progression takes a colour: which idiom fits where, why, and what that does to the tune.
 *
 * <p>Imports {@code theory} and {@code text}, and the progressions, tunes and voice leading of {@code harmony}; no input or
 * output, no state.
 */
package monochord.harmony.colour;
