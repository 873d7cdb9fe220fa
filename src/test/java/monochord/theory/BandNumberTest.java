package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BandNumberTest {
    /** Common practice, no source. */
    @ParameterizedTest(name = "{0} in {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            1      | C major | C     | I
            2      | C major | Dm    | ii
            3      | C major | Em    | iii
            4      | C major | F     | IV
            5      | C major | G     | V
            6      | C major | Am    | vi
            7      | C major | Bdim  | viio
            6-     | C major | Am    | vi
            6m     | C major | Am    | vi
            b6     | C major | Ab    | bVI
            b7     | Eb major| Db    | bVII
            b3     | Gb major| Bbb   | bIII
            '#4o7' | C major | F#dim7| '#ivo7'
            57     | D major | A7    | V7
            2-7    | Bb major| Cm7   | ii7
            2M     | C major | D     | II
            4-     | G major | Cm    | iv
            b6maj7 | E major | Cmaj7 | bVImaj7
            1/3    | D major | D/F#  | I6
            5/7    | C major | G/B   | V6
            4/1    | C major | F/C   | IV64
            5sus4  | A major | Esus4 | Vsus4
            1      | A minor | Am    | i
            3      | A minor | C     | III
            4      | A minor | Dm    | iv
            5      | A minor | E     | V
            5-     | A minor | Em    | v
            6      | A minor | F     | VI
            7      | A minor | G     | VII
            b7     | A minor | G     | VII
            """)
    void bandsCallChordsByNumber(String number, String key, String symbol, String numeral) {
        Numeral read = BandNumber.parse(number, Key.parse(key));
        assertEquals(symbol, read.in(Key.parse(key)).toString());
        assertEquals(numeral, read.toString());
    }
}
