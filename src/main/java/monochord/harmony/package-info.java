/**
 * What chords do together: progressions with bars, chords borrowed from parallel modes, and transposition.
 *
 * <p>Imports {@code theory} and nothing else of ours; no input or output, no state.
 */
package monochord.harmony;
