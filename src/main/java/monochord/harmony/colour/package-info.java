/**
 * Where a plain progression takes a colour: which chord to change, into what, why, and what that does to the tune.
 *
 * <p>Imports {@code theory}, and the progressions and tunes of {@code harmony}; no input or output, no state.
 */
package monochord.harmony.colour;
