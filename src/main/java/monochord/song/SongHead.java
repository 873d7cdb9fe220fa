package monochord.song;

import monochord.theory.Key;

/**
 * What stands at the head of a song.
 *
 * @param by who made it, or nothing
 * @param key in which its numbers and numerals are read
 * @param tempo quarters in a minute, in 6/8 and its kin dotted quarters; 0 where none is said
 * @param swing how eighths are played, as it was written, or nothing
 */
public record SongHead(String title, String by, Key key, SongMetre metre, int tempo, String swing) {
    /** Quarters in a minute; 0 where no tempo is said. */
    public int quarters() {
        return metre.isCompound() ? tempo * 3 / 2 : tempo;
    }

    public SongHead called(String name) {
        return new SongHead(name, by, key, metre, tempo, swing);
    }

    public SongHead in(Key other) {
        return new SongHead(title, by, other, metre, tempo, swing);
    }
}
