package monochord.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Source: General MIDI Level 1 Sound Set, MIDI Manufacturers Association, 1991 (1 to 30 seen, the rest from memory).
 */
class PatchTest {
    /** The first of each family of eight, and the last of all. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            1   | Acoustic Grand Piano
            9   | Celesta
            17  | Drawbar Organ
            25  | Acoustic Guitar (nylon)
            33  | Acoustic Bass
            41  | Violin
            49  | String Ensemble 1
            57  | Trumpet
            65  | Soprano Sax
            73  | Piccolo
            81  | Lead 1 (square)
            89  | Pad 1 (new age)
            97  | FX 1 (rain)
            105 | Sitar
            113 | Tinkle Bell
            121 | Guitar Fret Noise
            128 | Gunshot
            """)
    void familiesOfEightBeginWhereTheStandardPutsThem(int number, String name) {
        assertEquals(name, new Patch(number).name());
    }

    @Test
    void thereAre128WithNamesOfTheirOwnAndEachReadsItsName() {
        assertEquals(128, new HashSet<>(Patch.all().stream().map(Patch::name).toList()).size());
        Patch.all().forEach(patch -> assertEquals(patch, Patch.parse(patch.toString())));
        Patch.all().forEach(patch -> assertEquals(patch, Patch.parse("" + patch.number())));
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            piano             | 1
            grand             | 1
            honky tonk        | 4
            HONKYTONK PIANO   | 4
            electric piano    | 5
            e piano           | 5
            vibes             | 12
            organ             | 17
            church org        | 20
            nylon guitar      | 25
            strings           | 49
            string ensemble   | 49
            synthstrings 1    | 51
            sax               | 66
            alto sax          | 66
            bagpipe           | 110
            lead 8 bass lead  | 88
            007               | 7
            """)
    void isReadAsPlayersCallIt(String text, int number) {
        assertEquals(new Patch(number), Patch.parse(text));
    }

    @ParameterizedTest(name = "\"{0}\" is none")
    @CsvSource({"kazoo", "''", "0", "129", "-", "piano kazoo"})
    void saysWhatAPatchIs(String text) {
        assertEquals(
                "\"" + text + "\" is not a patch: expected a General MIDI name or a number from 1 to 128."
                        + " Example: electric piano 1",
                assertThrows(Unreadable.class, () -> Patch.parse(text)).getMessage());
    }
}
