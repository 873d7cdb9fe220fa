/**
 * What a row of voicings costs, and why: the one formula that every style is weighed by.
 *
 * <p>{@link monochord.harmony.voicing.cost.ChordTones} are the tones of a chord as a voicing sees them, {@link
 * monochord.harmony.voicing.cost.Cost} the parts of the sum. {@link monochord.harmony.voicing.cost.CostFormula} says the sum
 * plainly, {@link monochord.harmony.voicing.cost.TransitionCost} quickly, over {@link
 * monochord.harmony.voicing.cost.CandidateTable}s. The weights are {@link monochord.harmony.voicing.cost.VoicingWeights}.
 *
 * <p>Imports {@code theory} and {@code harmony.motion}; no input or output, no state.
 */
package monochord.harmony.voicing.cost;
