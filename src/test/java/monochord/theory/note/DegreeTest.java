package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import monochord.theory.Key;
import monochord.theory.Mode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DegreeTest {
    /** Source: names common to all English textbooks, from memory; numbers, Open Music Theory (2014), "scales", CC BY-SA 4.0. */
    @ParameterizedTest(name = "{0} is the {1}")
    @CsvSource(delimiter = '|', textBlock = """
            1 | tonic        | first   | 0  | Ab
            2 | supertonic   | second  | 2  | Bb
            3 | mediant      | third   | 4  | C
            4 | subdominant  | fourth  | 5  | Db
            5 | dominant     | fifth   | 7  | Eb
            6 | submediant   | sixth   | 9  | F
            7 | leading note | seventh | 11 | G
            """)
    void degreesOfTheMajorScaleHaveNames(int number, String name, String ordinal, int halfSteps, String inAFlat) {
        Degree degree = Degree.of(number, 0);
        assertEquals(name, degree.name());
        assertEquals(ordinal, degree.inWords());
        assertEquals(halfSteps, degree.semitones());
        assertEquals(inAFlat, degree.above(NoteName.parse("Ab")).toString());
    }

    /** Source: lowered and raised degrees, Open Music Theory (2014), "chromaticSolfege", CC BY-SA 4.0; spellings are arithmetic. */
    @ParameterizedTest(name = "{0} is the {1}")
    @CsvSource(delimiter = '|', textBlock = """
            b2  | lowered second         | Db  | Fb  | D
            b3  | lowered third          | Eb  | Gb  | E
            b5  | lowered fifth          | Gb  | Bbb | G
            b6  | lowered sixth          | Ab  | Cb  | A
            b7  | lowered seventh        | Bb  | Db  | B
            bb7 | doubly lowered seventh | Bbb | Dbb | Bb
            '#1'| raised first           | C#  | E   | C##
            '#2'| raised second          | D#  | F#  | D##
            '#4'| raised fourth          | F#  | A   | F##
            '#5'| raised fifth           | G#  | B   | G##
            '#6'| raised sixth           | A#  | C#  | A##
            """)
    void alteredDegreesKeepTheLetterOfTheDegree(
            String text, String words, String inC, String inEFlat, String inCSharp) {
        Degree degree = Degree.parse(text);
        assertEquals(words, degree.inWords());
        assertEquals(inC, degree.above(NoteName.C).toString());
        assertEquals(inEFlat, degree.above(NoteName.parse("Eb")).toString());
        assertEquals(inCSharp, degree.above(NoteName.parse("C#")).toString());
    }

    @Test
    void everyDegreeWithUpToFourAccidentalsComesRound() {
        for (int number = 1; number <= 7; number++) {
            for (int alteration = -4; alteration <= 4; alteration++) {
                Degree degree = Degree.of(number, alteration);
                assertEquals(degree, Degree.parse(degree.toString()));
                assertEquals(degree, Degree.parse(degree.write(Signs.MUSIC)));
                assertEquals(number, degree.number());
                assertEquals(alteration, degree.alteration());
                assertEquals(
                        degree, new Key(NoteName.parse("E"), Mode.IONIAN).degreeOf(degree.above(NoteName.parse("E"))));
            }
        }
    }

    @Test
    void anEighthDegreeIsAProgrammersSlip() {
        assertEquals(
                "a degree must be from 1 to 7, not 8",
                assertThrows(IllegalArgumentException.class, () -> Degree.of(8, 0))
                        .getMessage());
    }
}
