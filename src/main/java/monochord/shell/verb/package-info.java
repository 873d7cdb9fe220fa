/**
 * The verbs: one class each, which serves the prompt, the command line and the help.
 *
 * <p>Part of the shell room. A verb reads its sentence, changes the sitting if it must, and gives back an answer; it
 * never prints.
 *
 * <p>Imports {@code sitting}, {@code answer} and any other room.
 */
package monochord.shell.verb;
