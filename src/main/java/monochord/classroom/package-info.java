/**
 * Practice sent home: assignments, what pupils hand in, and its marking. An assignment is a Markdown file in the grammar of
 * lessons; what comes back is the same file with a pupil's code and answers in it.
 *
 * <ul>
 *   <li>{@link monochord.classroom.Assignment}: what is asked, of whom, how; drawn for all alike, or for each pupil apart
 *   <li>{@link monochord.classroom.HandIn}: what one pupil answered, as it was typed
 *   <li>{@link monochord.classroom.AssignmentReader}, {@link monochord.classroom.AssignmentWriter}: both as files
 *   <li>{@link monochord.classroom.Marking}: a file to a {@link monochord.classroom.MarkedHandIn}; it depends on nothing
 *       but the file and the assignments a teacher has
 * </ul>
 *
 * <p>A file says nothing of a pupil but a code. Times, tries and help are as told by the pupil's file.
 *
 * <p>Imports {@code theory}, {@code harmony}, {@code text}, {@code file}, {@code practice}, {@code record}, {@code
 * lesson} and {@code course}.
 */
package monochord.classroom;
