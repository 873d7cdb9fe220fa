/**
 * What differs between two versions of the same music, such as a plain one and an improved one: values first; {@link
 * monochord.harmony.contrast.ComparisonText} puts them into sentences.
 *
 * <p>Imports {@code theory} and {@code harmony.motion}; no input or output, no state.
 */
package monochord.harmony.contrast;
