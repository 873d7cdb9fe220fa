package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.HashSet;
import monochord.theory.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IntervalTest {
    /** Source: Open Music Theory (2014), "intervals", table of generic and chromatic sizes, CC BY-SA 4.0. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            P1 | 0  | 1 | P8 | C  | E  | Bb
            m2 | 1  | 2 | M7 | Db | F  | Cb
            M2 | 2  | 2 | m7 | D  | F# | C
            m3 | 3  | 3 | M6 | Eb | G  | Db
            M3 | 4  | 3 | m6 | E  | G# | D
            P4 | 5  | 4 | P5 | F  | A  | Eb
            A4 | 6  | 4 | d5 | F# | A# | E
            d5 | 6  | 5 | A4 | Gb | Bb | Fb
            P5 | 7  | 5 | P4 | G  | B  | F
            m6 | 8  | 6 | M3 | Ab | C  | Gb
            M6 | 9  | 6 | m3 | A  | C# | G
            m7 | 10 | 7 | M2 | Bb | D  | Ab
            M7 | 11 | 7 | m2 | B  | D# | A
            P8 | 12 | 8 | P1 | C  | E  | Bb
            """)
    void simpleIntervalsHaveTheirSizeInversionAndSpelling(
            String text, int halfSteps, int number, String inversion, String aboveC, String aboveE, String aboveBb) {
        Interval interval = Interval.parse(text);
        assertEquals(halfSteps, interval.semitones());
        assertEquals(number, interval.number());
        assertEquals(inversion, interval.inverted().toString());
        assertEquals(aboveC, NoteName.parse("C").plus(interval).toString());
        assertEquals(aboveE, NoteName.parse("E").plus(interval).toString());
        assertEquals(aboveBb, NoteName.parse("Bb").plus(interval).toString());
    }

    /** Source: sizes, Open Music Theory (2014), "intervals", CC BY-SA 4.0; spellings are arithmetic on them. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            A1 | 1  | C#  | A   | F##
            d3 | 2  | Ebb | Cbb | Ab
            A2 | 3  | D#  | B   | G##
            d4 | 4  | Fb  | Dbb | Bb
            A3 | 5  | E#  | C#  | A##
            d6 | 7  | Abb | Fbb | Db
            A5 | 8  | G#  | E   | C##
            d7 | 9  | Bbb | Gbb | Eb
            A6 | 10 | A#  | F#  | D##
            d8 | 11 | Cb  | Abb | F
            """)
    void augmentedAndDiminishedIntervalsKeepTheirLetters(
            String text, int halfSteps, String aboveC, String aboveAb, String aboveFSharp) {
        Interval interval = Interval.parse(text);
        assertEquals(halfSteps, interval.semitones());
        assertEquals(aboveC, NoteName.parse("C").plus(interval).toString());
        assertEquals(aboveAb, NoteName.parse("Ab").plus(interval).toString());
        assertEquals(aboveFSharp, NoteName.parse("F#").plus(interval).toString());
    }

    /** Source: Open Music Theory (2014), "intervals", CC BY-SA 4.0 (a compound keeps its quality); number + 7 from memory. */
    @ParameterizedTest(name = "{0} is {1} and an octave")
    @CsvSource(delimiter = '|', textBlock = """
            m9  | m2 | 13 | Db5
            M9  | M2 | 14 | D5
            A9  | A2 | 15 | D#5
            m10 | m3 | 15 | Eb5
            M10 | M3 | 16 | E5
            P11 | P4 | 17 | F5
            A11 | A4 | 18 | F#5
            P12 | P5 | 19 | G5
            m13 | m6 | 20 | Ab5
            M13 | M6 | 21 | A5
            P15 | P8 | 24 | C6
            """)
    void compoundIntervalsAreSimpleOnesAndAnOctave(String text, String simple, int halfSteps, String aboveMiddleC) {
        Interval interval = Interval.parse(text);
        assertEquals(interval, Interval.parse(simple).plus(Interval.OCTAVE));
        assertEquals(halfSteps, interval.semitones());
        assertEquals(aboveMiddleC, Pitch.parse("C4").plus(interval).toString());
    }

    /** Source: arithmetic on the sizes of Open Music Theory (2014), "intervals", CC BY-SA 4.0. */
    @ParameterizedTest(name = "{0} sounds like {1}")
    @CsvSource(delimiter = '|', textBlock = """
            A1 | m2 | 1
            d3 | M2 | 2
            A2 | m3 | 3
            d4 | M3 | 4
            A3 | P4 | 5
            A4 | d5 | 6
            d6 | P5 | 7
            A5 | m6 | 8
            d7 | M6 | 9
            A6 | m7 | 10
            d8 | M7 | 11
            A7 | P8 | 12
            """)
    void differentIntervalsCanHaveOneSize(String one, String other, int halfSteps) {
        assertEquals(halfSteps, Interval.parse(one).semitones());
        assertEquals(halfSteps, Interval.parse(other).semitones());
        assertNotEquals(Interval.parse(one), Interval.parse(other));
    }

    /** Source: Open Music Theory (2014), "whiteKeyMethod", CC BY-SA 4.0: all others of each number are as in the first row. */
    @ParameterizedTest(name = "white-key {0}")
    @CsvSource(delimiter = '|', textBlock = """
            2 | M2 | m2 | E-F B-C
            3 | m3 | M3 | C-E F-A G-B
            4 | P4 | A4 | F-B
            5 | P5 | d5 | B-F
            6 | M6 | m6 | E-C A-F B-G
            7 | m7 | M7 | F-E C-B
            """)
    void whiteKeyIntervalsAreAllAlikeButForAFew(int number, String mostly, String except, String exceptions) {
        for (NoteName low : Written.names("C D E F G A B")) {
            NoteName high = NoteName.of("CDEFGABCDEFGA".charAt(low.letterStep() + number - 1), 0);
            boolean named = (" " + exceptions + " ").contains(" " + low + "-" + high + " ");
            assertEquals(named ? except : mostly, low.to(high).toString(), low + "-" + high);
        }
    }

    @ParameterizedTest(name = "{0} is read as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            minor third            | m3
            Perfect fifth          | P5
            major ninth            | M9
            diminished seventh     | d7
            doubly augmented fourth| AA4
            double diminished fifth| dd5
            perfect unison         | P1
            perfect octave         | P8
            p5                     | P5
            -M10                   | -M10
            −m3                    | -m3
            """)
    void otherWritingsAreRead(String written, String interval) {
        assertEquals(interval, Interval.parse(written).toString());
    }

    @Test
    void everyIntervalToTwoOctavesComesRoundUpDownAndInWords() {
        assertEquals(81, new HashSet<>(Written.intervals()).size());
        for (Interval interval : Written.intervals()) {
            assertEquals(interval, Interval.parse(interval.toString()));
            assertEquals(interval.reversed(), Interval.parse(interval.reversed().toString()));
            assertEquals(interval, Interval.parse(interval.inWords()));
        }
    }

    @Test
    void everyIntervalOnTheLineOfFifthsComesRound() {
        for (int fifths = -60; fifths <= 60; fifths++) {
            for (int octaves = 0; octaves < 3; octaves++) {
                Interval interval = Interval.simple(fifths).plus(new Interval(0, octaves));
                assertEquals(interval, Interval.parse(interval.toString()));
            }
        }
    }

    @Test
    void intervalsAreEqualExactlyWhenTheyAreSpelledAlike() {
        for (Interval one : Written.intervals()) {
            for (Interval other : Written.intervals()) {
                assertEquals(one.toString().equals(other.toString()), one.equals(other));
                assertEquals(one.equals(other), one.compareTo(other) == 0);
            }
        }
    }
}
