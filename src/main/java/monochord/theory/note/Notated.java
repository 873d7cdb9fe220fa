package monochord.theory.note;

/**
 * Something of music that is written down: a note, a chord, a numeral, a degree, a row of chords.
 *
 * <p>How it is written depends on who reads: with the signs of print or in ASCII, and by the note names of a country.
 */
public interface Notated {
    /** The writing for this reader, without words of a language: {@code A♭maj7}, {@code Asmaj7}, {@code ♭VI}. */
    String write(Signs signs);
}
