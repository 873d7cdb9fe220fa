/**
 * Music on paper as MusicXML: lead sheets read into a tune, its chords and its key.
 *
 * <p>Imports {@code theory}, {@code harmony} and {@code text}, and the JDK's reader of XML.
 */
package monochord.song.musicxml;
