/**
 * A tune and how it fits over chords: its text form, what each of its notes does over its chord, and the nearest note
 * that would fit where one clashes.
 *
 * <p>Imports {@code theory} and the progressions of {@code harmony}; no input or output, no state.
 */
package monochord.harmony.melody;
