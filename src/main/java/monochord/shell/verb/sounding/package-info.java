/**
 * The verbs that sound and say how, and the options that write sound to files.
 *
 * <p>Imports {@code sentence}, {@code sitting}, {@code answer} and any other room.
 */
package monochord.shell.verb.sounding;
