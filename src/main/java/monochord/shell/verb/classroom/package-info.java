/**
 * The verbs of a class: practice sent home, and marking what comes back.
 *
 * <p>Imports the rooms as {@code shell} may.
 */
package monochord.shell.verb.classroom;
