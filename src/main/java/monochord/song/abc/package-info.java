/**
 * Tunes in ABC notation: read as songs, and songs written so.
 *
 * <p>Source: the ABC standard 2.1, December 2011. Imports {@code song} and what it may.
 */
package monochord.song.abc;
