/**
 * What is answered when something sounds.
 *
 * <p>Imports {@code sound} and {@code view}.
 */
package monochord.shell.sound;
