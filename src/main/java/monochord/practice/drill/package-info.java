/**
 * Runs of questions: which skill is asked in which key, in which order.
 *
 * <p>Keys and directions are mixed, for what is shuffled is kept longer than what is drilled in blocks (Rohrer, Dedrick and
 * Burgess, Psychonomic Bulletin and Review 2014; for musicians Carter and Grahn, Frontiers in Psychology 7, 2016, article
 * 1251).
 *
 * <p>Imports {@code practice} with its skills, and {@code theory}.
 */
package monochord.practice.drill;
