/**
 * What a command of the system brings along: its options, its page in the manual, what a shell can complete. All of it follows
 * from the one grammar of the verbs.
 *
 * <p>Imports {@code text}, {@code theory}, {@code view} and the verbs of {@code shell}.
 */
package monochord.shell.manual;
