/**
 * What a sitting is heard through, a sound card or none; what can be played there, and when ears and hands need a rest.
 *
 * <p>Imports {@code sound}, {@code score} and {@code view}, and nothing of the sitting.
 */
package monochord.shell.playback;
