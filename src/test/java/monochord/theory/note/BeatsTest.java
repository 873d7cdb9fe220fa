package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: arithmetic of fractions; 480 ticks a quarter, Standard MIDI-File Format Spec. 1.1, on division. */
class BeatsTest {
    @ParameterizedTest(name = "{0} and {1} make {2}")
    @CsvSource(delimiter = '|', textBlock = """
            1/3  | 2/3 | 1
            1/2  | 1/3 | 5/6
            0    | 3/2 | 3/2
            1/6  | 1/6 | 1/3
            9999 | 1   | 10000
            """)
    void addsExactly(String one, String other, String sum) {
        assertEquals(sum, Beats.parse(one).plus(Beats.parse(other)).toString());
    }

    @Test
    void threeTripletsFillABeat() {
        assertEquals(Beats.ONE, Beats.of(1, 3).times(3));
        assertEquals(Beats.of(1, 3), Beats.ONE.dividedInto(3));
    }

    @ParameterizedTest(name = "{0} beats are {1} ticks")
    @CsvSource(delimiter = '|', textBlock = """
            1    | 480
            1/3  | 160
            2/3  | 320
            1/16 | 30
            1/7  | 69
            2/7  | 137
            7/2  | 1680
            0    | 0
            """)
    void fallsOnTheNearestTick(String beats, long ticks) {
        assertEquals(ticks, Beats.parse(beats).ticks(480));
    }

    @Test
    void printsInLowestTermsWhatItReads() {
        for (int parts = 1; parts <= 32; parts++) {
            for (int count = 0; count <= 4 * parts; count++) {
                Beats beats = Beats.of(count, parts);
                assertEquals(beats, Beats.parse(beats.toString()));
            }
        }
        assertEquals("3/2", Beats.parse("6/4").toString());
    }

    @ParameterizedTest(name = "{0} is refused")
    @CsvSource(delimiter = '|', textBlock = """
            -1    | expected beats such as 2 or 1/2
            1/    | expected beats such as 2 or 1/2
            12345 | expected beats such as 2 or 1/2
            ''    | expected beats such as 2 or 1/2
            1/0   | a beat is divided into 1 to 32 parts
            1/33  | a beat is divided into 1 to 32 parts
            """)
    void saysWhatALengthIs(String text, String why) {
        assertEquals(
                '"' + text + "\" is not a length: " + why + ". Example: 1/2",
                assertThrows(Unreadable.class, () -> Beats.parse(text)).getMessage());
    }

    @Test
    void isNeverNegative() {
        assertThrows(IllegalArgumentException.class, () -> Beats.of(-1));
        assertThrows(IllegalArgumentException.class, () -> Beats.of(1, 0));
    }
}
