/**
 * The skills, each a small class that knows its subjects, works out the answer, and runs the wrong procedures that
 * learners run. {@link monochord.practice.skill.Skills} lists them.
 *
 * <p>Imports {@code practice}, {@code practice.answer}, {@code theory} and {@code harmony}.
 */
package monochord.practice.skill;
