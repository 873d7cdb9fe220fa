/**
 * What is answered in the course: lessons, questions, verdicts, and what is known.
 *
 * <p>Imports what {@code view} may: the rooms whose values it shows.
 */
package monochord.view.course;
