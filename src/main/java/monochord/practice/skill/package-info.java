/**
 * The skills, each a small class that knows its subjects, works out the answer, and runs the wrong procedures that
 * learners run. {@link monochord.practice.skill.Skills} lists them.
 *
 * <p>Imports {@code theory}, {@code harmony} and the other packages of {@code practice}, its own two included.
 */
package monochord.practice.skill;
