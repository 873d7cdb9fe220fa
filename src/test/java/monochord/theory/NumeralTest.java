package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class NumeralTest {
    private static final Key C_MAJOR = Key.parse("C major");

    static List<String[]> chordsFromOutsideTheKey() throws IOException {
        List<String[]> rows = new ArrayList<>(Table.rows("borrowed-triads.csv"));
        rows.addAll(Table.rows("borrowed-sevenths.csv"));
        rows.addAll(Table.rows("applied-chords.csv"));
        return rows;
    }

    /** Borrowed triads and sevenths of the fifteen major keys, applied chords of twelve; sources in the files. */
    @ParameterizedTest(name = "{1} in {0} major is {2}")
    @MethodSource("chordsFromOutsideTheKey")
    void borrowedAndAppliedChordsAreSpelledInTheKey(String tonic, String numeral, String tones) {
        Key key = Key.major(NoteName.parse(tonic));
        Chord chord = Numeral.parse(numeral).in(key);
        assertEquals(tones, Written.words(chord.tones()));
        assertEquals(chord.root(), chord.bass());
        assertEquals(numeral, Numeral.of(chord, key).toString());
    }

    @Test
    void allOfThemAreThere() throws IOException {
        assertEquals(120 + 105 + 95, chordsFromOutsideTheKey().size());
    }

    /** Source: Open Music Theory (2014), "alteredSubdominants", CC BY-SA 4.0; the lowered sixth is the bass. */
    @ParameterizedTest(name = "in {0}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | Ab C F# | Ab C D F# | Ab C Eb F#
            G  | Eb G C# | Eb G A C# | Eb G Bb C#
            D  | Bb D G# | Bb D E G# | Bb D F G#
            A  | F A D#  | F A B D#  | F A C D#
            F  | Db F B  | Db F G B  | Db F Ab B
            Bb | Gb Bb E | Gb Bb C E | Gb Bb Db E
            Eb | Cb Eb A | Cb Eb F A | Cb Eb Gb A
            E  | C E A#  | C E F# A# | C E G A#
            """)
    void augmentedSixthsStandOnTheLoweredSixth(String tonic, String italian, String french, String german) {
        for (Key key : List.of(Key.major(NoteName.parse(tonic)), Key.minor(NoteName.parse(tonic)))) {
            assertStack(italian, "It6", key);
            assertStack(french, "Fr43", key);
            assertStack(german, "Ger65", key);
        }
    }

    private static void assertStack(String tones, String numeral, Key key) {
        Chord chord = Numeral.parse(numeral).in(key);
        List<NoteName> expected = Written.names(tones);
        assertEquals(expected.get(0), chord.bass());
        assertEquals(expected.size(), chord.tones().size());
        assertTrue(chord.tones().containsAll(expected), numeral + " in " + key + " is " + chord.tones());
        assertEquals(numeral, Numeral.of(chord, key).toString());
    }

    /** Source: Open Music Theory (2014), "alteredSubdominants", CC BY-SA 4.0. */
    @ParameterizedTest(name = "{0} in {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            N     | C major  | Db F Ab
            N6    | C major  | F Ab Db
            N6    | G minor  | C Eb Ab
            N64   | C major  | Ab Db F
            Cad64 | C major  | G C E
            Cad64 | C minor  | G C Eb
            Cad64 | Bb major | F Bb D
            """)
    void chordsWithNamesOfTheirOwn(String numeral, String key, String fromBass) {
        assertEquals(
                fromBass,
                Written.words(Numeral.parse(numeral).in(Key.parse(key)).fromBass()));
    }

    /**
     * Source: Open Music Theory (2014), "thoroughbassFigures", CC BY-SA 4.0, for the figures; Integrated Music Theory,
     * lesson 6a, example 3, CC BY-NC-SA 4.0, for the seventh chords of C.
     */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            I        | C E G   | I
            I53      | C E G   | I
            I5/3     | C E G   | I
            I6       | E G C   | I6
            I63      | E G C   | I6
            I6/3     | E G C   | I6
            I64      | G C E   | I64
            I6/4     | G C E   | I64
            V7       | G B D F | V7
            V65      | B D F G | V65
            V6/5     | B D F G | V65
            V653     | B D F G | V65
            V43      | D F G B | V43
            V4/3     | D F G B | V43
            V643     | D F G B | V43
            V42      | F G B D | V42
            V4/2     | F G B D | V42
            V642     | F G B D | V42
            V2       | F G B D | V42
            ii6/5    | F A C D | ii65
            iii4/3   | B D E G | iii43
            IVmaj4/2 | E F A C | IVmaj42
            IVM42    | E F A C | IVmaj42
            viiø4/2  | A B D F | viiø42
            Imaj6/5  | E G B C | Imaj65
            ii6      | F A D   | ii6
            iii6/4   | B E G   | iii64
            V6       | B D G   | V6
            vi6/4    | E A C   | vi64
            viio6/4  | F B D   | viio64
            """)
    void figuresSayWhichToneIsInTheBass(String numeral, String fromBass, String written) {
        assertEquals(fromBass, Written.words(Numeral.parse(numeral).in(C_MAJOR).fromBass()));
        assertEquals(written, Numeral.parse(numeral).toString());
    }

    /** Source: Open Music Theory (2014), figuresBasic.ly, CC BY-SA 4.0: the notes that each figure puts above C. */
    @ParameterizedTest(name = "{0} above C is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            53 | I     | C E G
            6  | vi6   | C E A
            64 | IV64  | C F A
            7  | Imaj7 | C E G B
            65 | vi65  | C E G A
            43 | IVmaj43 | C E F A
            42 | ii42  | C D F A
            """)
    void figuresAboveC(String figure, String numeral, String above) {
        List<NoteName> fromBass = Numeral.parse(numeral).in(C_MAJOR).fromBass();
        assertEquals(NoteName.C, fromBass.get(0));
        assertEquals(
                Written.names(above), fromBass.stream().sorted(NumeralTest::up).toList(), figure);
    }

    private static int up(NoteName one, NoteName other) {
        return Integer.compare(one.letterStep(), other.letterStep());
    }

    /** Source: Open Music Theory (2014), "appliedChords", CC BY-SA 4.0; deeper targets are arithmetic. */
    @ParameterizedTest(name = "{0} in {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            V/V       | C major | D
            V65/ii    | C major | A7/C#
            viio7/V   | C major | F#dim7
            viiø7/V   | C major | F#m7b5
            IV/IV     | C major | Bb
            V7/V/vi   | C major | B7
            Cad64/V/vi| C major | E/B
            V7/bVI    | C major | Eb7
            iv6/iv    | C major | Bbm/Db
            V/III     | A minor | G
            ii6/III   | A minor | Dm/F
            V43/VI    | A minor | C7/G
            V2/N      | A minor | F7/Eb
            iiø65/iv  | A minor | Em7b5/G
            V7/V      | A minor | B7
            VI/5      | A minor | F/E
            IV/5      | C major | F/G
            V/7       | C major | G/B
            I/b3      | C major | C/Eb
            """)
    void appliedChordsStandInTheKeyOfTheirTarget(String numeral, String key, String symbol) {
        assertEquals(symbol, Numeral.parse(numeral).in(Key.parse(key)).toString());
    }

    @ParameterizedTest(name = "{0} is read as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            vii°7   | viio7
            viiØ7   | viiø7
            ♭VImaj7 | bVImaj7
            bVIM7   | bVImaj7
            It      | It6
            It+6    | It6
            Fr      | Fr43
            Ger6    | Ger65
            Cad     | Cad64
            Ger6/5  | Ger65
            Ger2    | Ger42
            V54     | Vsus4
            V5/4    | Vsus4
            IVd7    | IV7
            IVd65   | IV65
            I[add9] | Iadd9
            V7[no5] | V7(no5)
            I69     | I6/9
            IV/5    | IV/5
            V/7     | V/7
            """)
    void otherWritingsAreRead(String written, String numeral) {
        assertEquals(numeral, Numeral.parse(written).toString());
    }

    /** Source: RomanText (Tymoczko, Gotham, Cuthbert, Ariza, ISMIR 2019), from memory: the bass of each inversion in C. */
    @ParameterizedTest(name = "{0} has {1} in the bass")
    @CsvSource(delimiter = '|', textBlock = """
            Ger65 | Ab
            Ger7  | F#
            Ger43 | C
            Ger42 | Eb
            Fr43  | Ab
            Fr7   | D
            Fr65  | F#
            Fr42  | C
            It6   | Ab
            It53  | F#
            It64  | C
            """)
    void augmentedSixthsAreInverted(String numeral, String bass) {
        assertEquals(bass, Numeral.parse(numeral).in(Key.parse("C")).bass().toString());
    }

    /**
     * Source: arithmetic. A slash chord keeps its bass in minor too, where the root does not stand where it does in
     * major.
     */
    @ParameterizedTest(name = "{0} in {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            Ab/G | C minor | VI/5
            Eb/B | C minor | III/7
            Bb/Ab | C minor | VII/b6
            Ab/G | C major | bVI/5
            F/G  | C major | IV/5
            """)
    void aForeignBassIsADegreeOfTheKey(String chord, String key, String numeral) {
        assertEquals(numeral, Numeral.of(Chord.parse(chord), Key.parse(key)).toString());
        assertEquals(Chord.parse(chord), Numeral.parse(numeral).in(Key.parse(key)));
    }
}
