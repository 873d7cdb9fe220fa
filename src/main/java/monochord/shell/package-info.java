/**
 * The line: verbs, the prompt, the command line.
 *
 * <p>May import every other room. The only room that knows the terminal, the standard streams and the exit status.
 */
package monochord.shell;
