package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.Collectors;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeysTest {
    /** Source: the words are the format's own; the keys in use are the fifteen with up to seven signs. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            same                         | same                  | D
            easy                         | easy                  | C G F D Bb
            sharps                       | sharps                | G D A E B F# C#
            flats                        | flats                 | F Bb Eb Ab Db Gb Cb
            all                          | all                   | C G F D Bb A Eb E Ab B Db F# Gb C# Cb
            'E, A, then Bb, then Db, Gb' | E, A, then Bb, then Db, Gb | E A / Bb / Db Gb
            'same, then D'               | same, then D          | D / D
            'E then F'                   | E, then F             | E / F
            'G#m, Em, A minor, B♭'       | G#m, Em, Am, Bb       | G#m Em Am Bb
            'same, D, easy'              | same, D, easy         | D C G F Bb
            """)
    void readsTheKeysOfEachStep(String text, String written, String inD) {
        Keys keys = Keys.parse(text);
        assertEquals(written, keys.toString());
        assertEquals(keys, Keys.parse(written));
        assertEquals(
                inD,
                keys.in(Key.parse("D")).stream()
                        .map(step -> step.stream()
                                .map(key -> key.tonic() + (key.isMinor() ? "m" : ""))
                                .collect(Collectors.joining(" ")))
                        .collect(Collectors.joining(" / ")));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            D, H        | 3 | "H" is not a key: expected a key, or same, easy, sharps, flats or all. Example: easy, then E, A, then flats
            mine        | 0 | "mine" is not a key: expected a key, or same, easy, sharps, flats or all. Example: easy, then E, A, then flats
            D,          | 2 | "" is not a key: expected a key, or same, easy, sharps, flats or all. Example: easy, then E, A, then flats
            C, G#       | 3 | "G#" is not a key: a key to ask in must be major or minor and have at most seven signs. Example: easy, then E, A, then flats
            C, D dorian | 3 | "D dorian" is not a key: a key to ask in must be major or minor and have at most seven signs. Example: easy, then E, A, then flats
            """)
    void saysWhichKeyIsNone(String text, int place, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> Keys.parse(text));
        assertEquals(message, refusal.getMessage());
        assertEquals(place, refusal.place());
    }

    @Test
    void asksInTheLearnersOwnKeyUnlessTold() {
        assertEquals("same", Keys.same().toString());
        assertEquals(Keys.same(), Keys.parse("same"));
    }
}
