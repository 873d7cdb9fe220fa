/**
 * What one sitting at the line remembers: the key, what is under way and in which mode the line is, what sounds. Turns the
 * steps of the room {@code course} into answers.
 *
 * <p>Part of the shell room; knows nothing of verbs or the terminal.
 *
 * <p>Imports {@code course}, {@code view} and the rooms they lead through, and nothing of the verbs.
 */
package monochord.shell.sitting;
