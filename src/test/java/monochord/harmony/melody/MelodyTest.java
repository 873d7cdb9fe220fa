package monochord.harmony.melody;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MelodyTest {
    /** Source: our own text form; notes in a row, nobody's tune. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            E4:1 D4:1/2 r:1 C4:2        | E4 D4:1/2 r C4:2
            e4 d c                      | E4 D4 C4
            C G C5 F# C                 | C4 G3 C5 F#5 C5
            F                           | F4
            Gb                          | Gb3
            A♭4:2, B♭, c                | Ab4:2 Bb4 C5
            C4:1 .:1 r r                | C4:2 r:2
            C4 r C4                     | C4 r C4
            '| C4 D E F | G4:3 |'       | '| C4 D4 E4 F4 | G4:3'
            'G4 | C5:2 | .:2 | C5'      | 'G4 | C5:2 | .:2 | C5'
            'C4:2 | D4:4 | E4:2'        | 'C4:2 | D4:4 | E4:2'
            """)
    void readsAndWrites(String text, String written) {
        assertEquals(written, Melody.parse(text).toString());
    }

    /**
     * The first bar may be a pick-up, so the tune has to say how long it is. Source: our own text form, counted by
     * hand.
     */
    @ParameterizedTest(name = "{0}: bars of {1}, pick-up of {2}")
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            'C4 D E F'                  | none | 0
            '| C4 D E F | G4:3 |'       | 4    | 0
            'G4 | C5 C C | C:3'         | 3    | 1
            'C5 C C | C:3 | C:1'        | 3    | 0
            """)
    void knowsItsBars(String text, String bar, String pickup) {
        Melody melody = Melody.parse(text);
        assertEquals(bar, melody.bar().map(Object::toString).orElse("none"));
        assertEquals(pickup, melody.pickup().toString());
    }

    @ParameterizedTest(name = "{0} cannot be read at {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            ''                    | 0  | "" is not a melody: expected a note such as E4 at character 1, found the end
            'r r:2'               | 5  | "r r:2" is not a melody: expected a note such as E4 at character 6, found the end
            'E4 H4'               | 3  | "H4" is not a pitch: expected a letter from A to G at character 1, found 'H'
            'E4 Eq'               | 4  | "Eq" is not a note name: expected b, bb, #, x or the end at character 2, found 'q'
            'E4: D4'              | 3  | "" is not a length: expected beats such as 2 or 1/2
            'E4:1/64'             | 5  | "1/64" is not a length: a beat is divided into 1 to 32 parts
            'E4:0'                | 3  | "E4:0" is not a melody: a note must last longer than nothing
            '. E4'                | 0  | ". E4" is not a melody: expected a note before the hold at character 1, found '.'
            'E4 r .'              | 5  | "E4 r ." is not a melody: expected a note before the hold at character 6, found '.'
            'E4 F | G A | B C D | E F'  | 13 | '"E4 F | G A | B C D | E F" is not a melody: bar 3 has 3 beats where the others have 2'
            '| E4 F | G A B | C:3'      | 2  | '"| E4 F | G A B | C:3" is not a melody: bar 1 has 2 beats where the others have 3'
            'B10 C'               | 4  | "B10 C" is not a melody: the nearest C has no octave from -1 to 10
            """)
    void refuses(String text, int place, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> Melody.parse(text));
        assertEquals(message, refusal.trouble().toString());
        assertEquals(place, refusal.place());
    }

    @Test
    void readsAllThatItWrites() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder();
            for (int note = 0; note < 1 + random.nextInt(9); note++) {
                text.append("CDEFGABr".charAt(note == 0 ? 0 : random.nextInt(8)));
                text.append(':')
                        .append(1 + random.nextInt(5))
                        .append('/')
                        .append(1 + random.nextInt(4))
                        .append(' ');
            }
            Melody melody = Melody.parse(text.toString());
            assertEquals(melody, Melody.parse(melody.toString()), text::toString);
        }
    }

    @Test
    void neverBreaksOnAnyText() {
        SplittableRandom random = new SplittableRandom(11);
        String pieces = "ABCDEFGrabc#b♭x0123456789:/.| ,-\u0000\uD834";
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int c = random.nextInt(12); c >= 0; c--) {
                text.append(pieces.charAt(random.nextInt(pieces.length())));
            }
            try {
                Melody.parse(text.toString());
                read++;
            } catch (Unreadable refused) {
                assertTrue(refused.place() <= text.length(), text::toString);
            }
        }
        assertTrue(read > 100, "only " + read + " read");
    }

    @Test
    void refusesATuneWithoutEndAndLengthsThatShareNoPart() {
        assertThrows(Unreadable.class, () -> Melody.parse("C ".repeat(2001)));
        assertEquals(2000, Melody.parse("C ".repeat(2000)).notes().size());
        assertThrows(Unreadable.class, () -> Melody.parse("C:1/31 C:1/29 C:1/27 C:1/25 C:1/23 C:1/19 C:1/17"));
        assertThrows(Unreadable.class, () -> Melody.parse("C4 " + "E G# C ".repeat(60)));
    }
}
