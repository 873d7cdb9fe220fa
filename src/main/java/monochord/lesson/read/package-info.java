/**
 * From lesson files to lessons: the library of a folder, the reader that finds every fault of a file in one pass, and the
 * limits that keep any file whatever readable in well under a second.
 *
 * <p>Imports {@code lesson}, {@code practice}, {@code harmony} and {@code theory}. Files are read and never written.
 */
package monochord.lesson.read;
