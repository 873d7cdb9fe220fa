/**
 * What is answered about a class: an assignment that was written, hand-ins that were marked.
 *
 * <p>Imports {@code classroom}, {@code practice}, {@code lesson}, {@code text} and {@code view}.
 */
package monochord.view.classroom;
