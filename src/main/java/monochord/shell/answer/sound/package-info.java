/**
 * What is answered when something sounds.
 *
 * <p>Imports {@code answer} and the rooms whose values it shows.
 */
package monochord.shell.answer.sound;
