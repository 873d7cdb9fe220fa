/**
 * The Markdown lesson as a value: its prose, what it shows and plays, what it asks, and how its text is filled in for a
 * key.
 *
 * <p>{@code lesson.read} finds, reads and checks lesson files. Everything here is safe to show: control characters never
 * get this far.
 *
 * <p>Imports {@code theory}, {@code harmony} and {@code practice}.
 */
package monochord.lesson;
