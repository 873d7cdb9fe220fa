package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.theory.note.Interval;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MusicWordsTest {
    /** Source: English. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1  | unison     | a unison
            3  | third      | a third
            8  | octave     | an octave
            11 | eleventh   | an eleventh
            13 | thirteenth | a thirteenth
            17 | 17th       | a 17th
            """)
    void namesTheNumberOfAnInterval(int number, String words, String one) {
        assertEquals(words, MusicWords.number(number).toString());
        assertEquals(one, MusicWords.oneNumber(number).toString());
    }

    /** As a chord calls its tones: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0  | 13 | thirteenth
            1  | 11 | raised eleventh
            -1 | 9  | lowered ninth
            -2 | 7  | doubly lowered seventh
            2  | 5  | doubly raised fifth
            3  | 4  | much raised fourth
            -3 | 4  | much lowered fourth
            """)
    void saysHowATonePlaysAgainstItsNumber(int alteration, int number, String words) {
        assertEquals(words, MusicWords.altered(alteration, number).toString());
    }

    @ParameterizedTest
    @CsvSource({"m2, a half step", "M2, a whole step", "A2, an augmented second", "-m2, a half step"})
    void namesASecondAsAStep(String second, String words) {
        assertEquals(words, MusicWords.step(Interval.parse(second)).toString());
    }

    @ParameterizedTest
    @CsvSource({"0, 0 half steps", "1, 1 half step", "5, 5 half steps"})
    void countsHalfSteps(int count, String words) {
        assertEquals(words, MusicWords.halfSteps(count).toString());
    }
}
