package monochord.song;

import monochord.text.Phrase;

/**
 * Something wrong in a song, or something of it that is not read.
 *
 * @param line from 1
 * @param column from 1, in characters
 * @param what a clause that says what was found
 * @param instead a clause that says what to write
 */
public record SongFault(int line, int column, Phrase what, Phrase instead) {
    /** {@code line 3, column 5: what is wrong; what to write}. */
    public Phrase phrase() {
        return Phrase.of("line {0}, column {1}: {2}; {3}", line, column, what, instead);
    }

    @Override
    public String toString() {
        return phrase().toString();
    }
}
