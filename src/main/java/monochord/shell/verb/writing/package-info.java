/**
 * The verbs for files that are read as documents: lessons and notebooks.
 *
 * <p>Imports {@code sentence}, {@code sitting}, {@code answer} and any other room.
 */
package monochord.shell.verb.writing;
