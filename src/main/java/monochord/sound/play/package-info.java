/**
 * A performance sounding on this machine's speakers, now.
 *
 * <p>May import {@code sound}, {@code sound.file} and {@code theory}.
 */
package monochord.sound.play;
