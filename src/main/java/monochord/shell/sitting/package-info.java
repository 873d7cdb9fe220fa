/**
 * What one sitting at the line remembers: the key, the open question, the lesson being taken, what sounds.
 *
 * <p>Part of the shell room; knows nothing of verbs or the terminal.
 *
 * <p>Imports {@code answer} and the rooms it leads through, and nothing of the verbs.
 */
package monochord.shell.sitting;
