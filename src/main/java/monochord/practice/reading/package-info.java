/**
 * Reads answers as people write them: words and signs for accidentals, any separator, octave numbers, notes run together.
 * Lenient in writing only; what the notes are is judged elsewhere.
 *
 * <p>Imports {@code theory}.
 */
package monochord.practice.reading;
