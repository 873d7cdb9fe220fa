/**
 * Music on paper as MusicXML: lead sheets read into a tune, its chords and its key.
 *
 * <p>Imports {@code theory}, {@code harmony} and {@code text}. The library for the format, {@code org.audiveris.proxymusic}, is loaded
 * only when a file is read.
 */
package monochord.song.musicxml;
