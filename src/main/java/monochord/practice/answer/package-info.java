/**
 * Reads answers leniently and judges them strictly: one reader and one judge for each kind of answer.
 *
 * <p>Imports {@code practice}, {@code theory} and {@code harmony}.
 */
package monochord.practice.answer;
