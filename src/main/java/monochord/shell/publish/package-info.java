/**
 * Notebooks made into pages: {@link monochord.shell.publish.Publication} types one again and gathers what came back, the
 * pictures and the sounds with it.
 *
 * <p>May import what {@code shell} may.
 */
package monochord.shell.publish;
