/**
 * A learner's way: where somebody new begins, runs of questions, the review, a lesson taken page by page, a lesson taken
 * with a class. Each says as a value what comes next: a page, a question, an end; whoever shows it finds the words.
 *
 * <p>Imports {@code practice}, {@code record}, {@code lesson}, {@code text}, {@code theory} and {@code harmony}.
 */
package monochord.course;
