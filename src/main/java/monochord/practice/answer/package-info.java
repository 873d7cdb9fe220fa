/**
 * Judges answers strictly, one rubric for each kind of answer, and says what is right, what is off and the next move.
 *
 * <p>Imports {@code practice}, {@code practice.reading}, {@code text}, {@code theory} and {@code harmony}.
 */
package monochord.practice.answer;
