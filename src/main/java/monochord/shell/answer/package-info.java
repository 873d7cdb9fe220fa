/**
 * What a verb answers, as values that are shown as text at the prompt and as JSON to other programs.
 *
 * <p>Part of the shell room; knows nothing of verbs, the sitting or the terminal.
 *
 * <p>Imports the rooms whose values it shows, and nothing of the sitting or the verbs.
 */
package monochord.shell.answer;
