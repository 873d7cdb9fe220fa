/**
 * How voices move from chord to chord: pairs of voices and their motion, what is kept and how far the rest goes, and what
 * a strict or an easy-going teacher would mark. Values first; {@link monochord.harmony.motion.MotionExplanation} puts them
 * into sentences.
 *
 * <p>Imports {@code theory}; no input or output, no state.
 */
package monochord.harmony.motion;
