/**
 * What a sitting is heard through: a sound card, or none.
 *
 * <p>Imports {@code sound}, and nothing of the sitting.
 */
package monochord.shell.playback;
