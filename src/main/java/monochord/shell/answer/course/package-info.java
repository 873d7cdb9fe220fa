/**
 * What is answered in the course: lessons, questions, verdicts, and what is known.
 *
 * <p>Imports {@code answer} and the rooms whose values it shows.
 */
package monochord.shell.answer.course;
