/**
 * Skills, questions, verdicts and misconceptions: what a teacher asks and what is said to the answer.
 *
 * <p>This package holds the values; {@code practice.reading} reads answers, {@code practice.answer} judges them, {@code
 * practice.skill} holds the skills themselves and lists them. A question is a pure function of skill, key and subject;
 * chance comes in as a seed.
 *
 * <p>Imports {@code theory} and {@code harmony}.
 */
package monochord.practice;
