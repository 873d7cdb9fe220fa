/** What is answered in the course: lessons, questions, verdicts, and what is known. */
package monochord.shell.answer.course;
