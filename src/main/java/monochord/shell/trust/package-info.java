/**
 * Whose code may run: what came with the program, and what a person has said yes to.
 *
 * <p>May import {@code sound} for writing files whole, and nothing else of ours.
 */
package monochord.shell.trust;
