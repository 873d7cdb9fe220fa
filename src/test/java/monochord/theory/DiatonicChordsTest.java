package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DiatonicChordsTest {
    private static final Key C_MAJOR = Key.parse("C major");
    private static final Key C_MINOR = Key.parse("C minor");

    private static String tones(String numeral, Key key) {
        return Written.words(Numeral.parse(numeral).in(key).tones());
    }

    static List<String[]> triads() throws IOException {
        return Table.rows("diatonic-triads.csv");
    }

    @ParameterizedTest(name = "{1} in {0} major is {2}")
    @MethodSource("triads")
    void triadsOfTheFifteenMajorKeys(String tonic, String numeral, String symbol) {
        Key key = Key.major(NoteName.parse(tonic));
        assertEquals(symbol, Numeral.parse(numeral).in(key).toString());
        assertEquals(numeral, Numeral.of(Chord.parse(symbol), key).toString());
    }

    /** Source: Open Music Theory (2014), "triads", CC BY-SA 4.0; Integrated Music Theory, lesson 6a, CC BY-NC-SA 4.0. */
    @ParameterizedTest(name = "{0} and {3}")
    @CsvSource(delimiter = '|', textBlock = """
            I    | C E G | C    | Imaj7  | C E G B | Cmaj7
            ii   | D F A | Dm   | ii7    | D F A C | Dm7
            iii  | E G B | Em   | iii7   | E G B D | Em7
            IV   | F A C | F    | IVmaj7 | F A C E | Fmaj7
            V    | G B D | G    | V7     | G B D F | G7
            vi   | A C E | Am   | vi7    | A C E G | Am7
            viio | B D F | Bdim | viiø7  | B D F A | Bm7b5
            """)
    void triadsAndSeventhsOfCMajor(
            String triad, String triadTones, String symbol, String seventh, String seventhTones, String seventhSymbol) {
        assertEquals(triadTones, tones(triad, C_MAJOR));
        assertEquals(symbol, Numeral.parse(triad).in(C_MAJOR).toString());
        assertEquals(seventhTones, tones(seventh, C_MAJOR));
        assertEquals(seventhSymbol, Numeral.parse(seventh).in(C_MAJOR).toString());
        assertEquals(seventh, Numeral.of(Chord.parse(seventhSymbol), C_MAJOR).toString());
    }

    /** Source: Open Music Theory (2014), "triads", CC BY-SA 4.0; Integrated Music Theory, lesson 6a, CC BY-NC-SA 4.0. */
    @ParameterizedTest(name = "{0} in natural minor")
    @CsvSource(delimiter = '|', textBlock = """
            i   | C Eb G  | m7   | C Eb G Bb
            iio | D F Ab  | m7b5 | D F Ab C
            III | Eb G Bb | maj7 | Eb G Bb D
            iv  | F Ab C  | m7   | F Ab C Eb
            v   | G Bb D  | m7   | G Bb D F
            VI  | Ab C Eb | maj7 | Ab C Eb G
            VII | Bb D F  | 7    | Bb D F Ab
            """)
    void chordsOfCNaturalMinor(String triad, String triadTones, String seventhKind, String seventhTones) {
        inMinor(triad, triadTones, seventhKind, seventhTones);
    }

    /** Source: as for natural minor, with the leading note. */
    @ParameterizedTest(name = "{0} in harmonic minor")
    @CsvSource(delimiter = '|', textBlock = """
            i    | C Eb G  | mMaj7  | C Eb G B
            iio  | D F Ab  | m7b5   | D F Ab C
            III+ | Eb G B  | maj7#5 | Eb G B D
            iv   | F Ab C  | m7     | F Ab C Eb
            V    | G B D   | 7      | G B D F
            VI   | Ab C Eb | maj7   | Ab C Eb G
            viio | B D F   | dim7   | B D F Ab
            """)
    void chordsOfCHarmonicMinor(String triad, String triadTones, String seventhKind, String seventhTones) {
        inMinor(triad, triadTones, seventhKind, seventhTones);
    }

    /** Source: as for natural minor, with the raised sixth and seventh. */
    @ParameterizedTest(name = "{0} in melodic minor going up")
    @CsvSource(delimiter = '|', textBlock = """
            i    | C Eb G | mMaj7  | C Eb G B
            ii   | D F A  | m7     | D F A C
            III+ | Eb G B | maj7#5 | Eb G B D
            IV   | F A C  | 7      | F A C Eb
            V    | G B D  | 7      | G B D F
            vio  | A C Eb | m7b5   | A C Eb G
            viio | B D F  | m7b5   | B D F A
            """)
    void chordsOfCMelodicMinor(String triad, String triadTones, String seventhKind, String seventhTones) {
        inMinor(triad, triadTones, seventhKind, seventhTones);
    }

    private static void inMinor(String triad, String triadTones, String seventhKind, String seventhTones) {
        Chord chord = Numeral.parse(triad).in(C_MINOR);
        assertEquals(triadTones, Written.words(chord.tones()));
        assertEquals(triad, Numeral.of(chord, C_MINOR).toString());
        Chord seventh = new Chord(chord.root(), ChordKind.parse(seventhKind));
        assertEquals(seventhTones, Written.words(seventh.tones()));
        assertEquals(seventh, Numeral.of(seventh, C_MINOR).in(C_MINOR));
        assertEquals(
                seventh.kind(),
                ChordKind.of(chord.root(), Written.names(seventhTones)).orElseThrow());
    }

    /** Source: RomanText, "syntax.md" of When in Rome (Gotham et al.), CC BY-SA 4.0; the signs # and b from memory. */
    @ParameterizedTest(name = "{0} in A minor is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            vii    | G#m   | vii
            viio   | G#dim | viio
            viio7  | G#dim7| viio7
            VII    | G     | VII
            VII7   | G7    | VII7
            vi     | F#m   | vi
            vio    | F#dim | vio
            VI     | F     | VI
            III    | C     | III
            III+   | Caug  | III+
            bVII   | G     | VII
            bVI    | F     | VI
            bIII   | C     | III
            '#viio'| G#dim | viio
            '#VII' | G#    | '#VII'
            '#vio' | F#dim | vio
            """)
    void theSixthAndSeventhDegreesInMinorFollowTheQuality(String numeral, String symbol, String back) {
        Key key = Key.parse("A minor");
        assertEquals(symbol, Numeral.parse(numeral).in(key).toString());
        assertEquals(back, Numeral.of(Chord.parse(symbol), key).toString());
    }

    /** Source: circle of fifths, from memory: roots fall by a fifth, once by a diminished one. */
    @Test
    void theDiatonicCircleFallsByFifths() {
        for (Key key : Key.majorKeys()) {
            String[] circle = "I IV viio iii vi ii V I".split(" ");
            for (int i = 1; i < circle.length; i++) {
                NoteName from = Numeral.parse(circle[i - 1]).in(key).root();
                NoteName to = Numeral.parse(circle[i]).in(key).root();
                assertEquals(i == 2 ? "d5" : "P5", to.to(from).toString());
            }
        }
    }
}
