package monochord.harmony.key;

import monochord.harmony.after.SongCounts;

/**
 * What keys are found by.
 *
 * @param tones how long each degree sounds in tunes, and which begins and ends
 * @param chords which chords come in songs, and after one another
 */
public record KeyCounts(ToneProfiles tones, ChordTable chords) {
    /** @param tones the text form of {@link ToneProfiles} */
    public static KeyCounts of(String tones, SongCounts songs) {
        return new KeyCounts(ToneProfiles.parse(tones), ChordTable.of(songs));
    }
}
