/**
 * The verbs of the song: open it, change it, take a change back; and how a verb is told a place in it.
 *
 * <p>Imports what {@code shell} may.
 */
package monochord.shell.verb.song;
