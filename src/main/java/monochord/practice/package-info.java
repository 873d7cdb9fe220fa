/**
 * Skills, questions, verdicts and misconceptions: what a teacher asks and what is said to the answer.
 *
 * <p>This package holds the values; {@code practice.answer} reads and compares answers, {@code practice.skill} holds the
 * skills themselves. A question is a pure function of skill, key and subject; chance comes in as a seed.
 *
 * <p>Imports {@code theory} and {@code harmony}.
 */
package monochord.practice;
