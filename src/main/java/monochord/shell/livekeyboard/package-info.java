/**
 * What moves in the strip under the prompt: the keys that go down while music sounds.
 *
 * <p>Part of the shell room. Imports {@code sitting}, whose {@link monochord.shell.playback.LiveStrip} it draws on, and the rooms
 * of scores and pictures.
 */
package monochord.shell.livekeyboard;
