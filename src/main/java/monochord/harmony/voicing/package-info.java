/**
 * The best way to play a progression with two hands, and why it is the best.
 *
 * <p>A {@link monochord.harmony.voicing.VoicingTask} says what is to be played: chords, key, style, reach, perhaps a tune on
 * top. {@link monochord.harmony.voicing.Candidates} are all the ways to play one chord that keep the rules, {@code
 * harmony.voicing.cost} says what a row of them costs, and {@link monochord.harmony.voicing.VoicingSearch} finds the cheapest
 * rows there are. {@link monochord.harmony.voicing.RootPositionComparison} tells what moves and what stays, {@link
 * monochord.harmony.voicing.AlternativeVoicing} what else is worth playing.
 *
 * <p>Imports {@code theory} and {@code harmony}; no input or output, no state.
 */
package monochord.harmony.voicing;
