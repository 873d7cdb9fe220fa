package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ChordTest {
    static List<String[]> symbols() throws IOException {
        return Table.rows("chord-symbols.csv");
    }

    /** Every customary writing of each kind, on C, on a flat root and on a sharp one; sources in the file. */
    @ParameterizedTest(name = "{1} is {2}")
    @MethodSource("symbols")
    void everyCustomaryWritingIsSpelled(String kind, String symbol, String tones) {
        Chord chord = Chord.parse(symbol);
        assertEquals(new HashSet<>(Written.names(tones)), new HashSet<>(chord.tones()), chord.toString());
        assertEquals(Written.names(tones).size(), chord.tones().size());
        assertEquals(Written.names(tones).get(0), chord.tones().get(0));
        assertEquals(ChordKind.parse(kind.equals("maj") ? "" : kind), chord.kind());
    }

    /** Source: W3C MusicXML 4.0, type kind-value; half steps above the root. */
    @Test
    void everyKindHasItsHalfSteps() throws IOException {
        for (String[] row : Table.rows("chord-kinds.csv")) {
            ChordKind kind = ChordKind.parse(row[0].equals("maj") ? "" : row[0]);
            assertEquals(
                    new HashSet<>(List.of(row[1].split(" "))),
                    new HashSet<>(kind.intervals().stream()
                            .map(interval -> "" + interval.semitones())
                            .toList()),
                    row[0]);
        }
    }

    /**
     * Source: Integrated Music Theory, lessons 3c and 14a, CC BY-NC-SA 4.0, for numbers, suspensions and slashes; W3C
     * MusicXML 4.0 for the six-nine chord (lesson 3c gives it a seventh, wrongly); 2, 4, Δ, - and + are common practice,
     * no source.
     */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C9       | C E G Bb D   | a number alone has the small seventh
            Cadd9    | C E G D      | added, without a seventh
            Cmaj9    | C E G B D    | with the large one
            Csus     | C F G        | sus alone is the fourth
            C2       | C E G D      | the third is kept
            C4       | C F G        | a suspension
            CΔ       | C E G B      | a seventh chord
            C-       | C Eb G       | minor
            C-7      | C Eb G Bb    | minor
            C-9      | C Eb G Bb D  | minor, not a lowered ninth
            C-5      | C E Gb       | a lowered fifth
            C7-9     | C E G Bb Db  | a lowered ninth
            C7-5     | C E Gb Bb    | a lowered fifth
            C+       | C E G#       | augmented
            C7+9     | C E G Bb D#  | a raised ninth
            C7+      | C E G# Bb    | a raised fifth
            C+7      | C E G# Bb    | a raised fifth
            Cø       | C Eb Gb Bb   | half-diminished with or without its 7
            C°       | C Eb Gb      | a triad
            Co7      | C Eb Gb Bbb  | diminished
            C6/9     | C E G A D    | no seventh
            Cm7b5    | C Eb Gb Bb   | half-diminished
            Cm(maj7) | C Eb G B     | minor with a large seventh
            Cm/maj7  | C Eb G B     | no bass note
            C7(b9)   | C E G Bb Db  | brackets
            C7(#9,b13)| C E G Bb D# Ab | two alterations
            B♭7      | Bb D F Ab    | printed signs
            f#m7     | F# A C# E    | a small letter for the root is read
            Calt     | C E Gb G# Bb Db D# | a fifth and a ninth of either kind
            """)
    void trapsOfNotation(String symbol, String tones, String why) {
        assertEquals(
                new HashSet<>(Written.names(tones)),
                new HashSet<>(Chord.parse(symbol).tones()),
                why);
    }

    /** Source: Open Music Theory (2014), CC BY-SA 4.0, and Integrated Music Theory, lesson 3c; F/G and Ab/C are arithmetic. */
    @ParameterizedTest(name = "{0} from the bass is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            D7/F#    | F# A C D
            D7/A     | A C D F#
            D7/C     | C D F# A
            Cm/Eb    | Eb G C
            D#dim/F# | F# A D#
            F/G      | G F A C
            Ab/C     | C Eb Ab
            C/E      | E G C
            C/G      | G C E
            C/Bb     | Bb C E G
            C7/Bb    | Bb C E G
            Gsus4/D  | D G C
            C6/9/E   | E G A D C
            """)
    void aLetterBehindASlashIsTheBass(String symbol, String fromBass) {
        Chord chord = Chord.parse(symbol);
        assertEquals(Written.names(fromBass).get(0), chord.fromBass().get(0));
        assertEquals(new HashSet<>(Written.names(fromBass)), new HashSet<>(chord.fromBass()));
        assertTrue(chord.isInverted());
    }

    /** Source: arithmetic; that the context decides is noted in Integrated Music Theory, lesson 3c, CC BY-NC-SA 4.0. */
    @ParameterizedTest(name = "{0} and {1} are the same keys: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C6     | Am7/C     | true
            Cm6    | Am7b5/C   | true
            Csus4  | Fsus2/C   | true
            C9sus4 | Gm7/C     | false
            Co7    | Ebo7/C    | true
            Co7    | F#o7/C    | true
            Co7    | Ao7/C     | true
            C+     | E+/C      | true
            C+     | Ab+/C     | true
            Cadd2  | Cadd9     | true
            Ebm    | D#m       | true
            Cm     | C         | false
            C/E    | C         | false
            """)
    void differentSymbolsCanSoundAlike(String one, String other, boolean alike) {
        assertEquals(alike, Chord.parse(one).soundsLike(Chord.parse(other)));
    }

    /** Source: Integrated Music Theory, lesson 16a, CC BY-NC-SA 4.0, for the theory; the respellings are common practice, no source. */
    @ParameterizedTest(name = "{0} may be printed {1} on a chart")
    @CsvSource({"Cb, B", "Fb, E", "Bbb, A", "Ebb, D", "Abb, G", "Gbm, F#m", "Cbm, Bm", "Dbm, C#m"})
    void awkwardSpellingsSoundLikeWhatChartsPrint(String theory, String chart) {
        assertTrue(Chord.parse(theory).soundsLike(Chord.parse(chart)));
        assertFalse(Chord.parse(theory).equals(Chord.parse(chart)));
    }

    @Test
    void everyCustomaryKindOnEveryRootOverEveryBassComesRound() throws IOException {
        int seen = 0;
        for (String[] row : Table.rows("chord-kinds.csv")) {
            ChordKind kind = ChordKind.parse(row[0].equals("maj") ? "" : row[0]);
            for (NoteName root : Written.names(2)) {
                for (NoteName bass : Written.names(1)) {
                    Chord chord = new Chord(root, kind, bass);
                    assertEquals(chord, Chord.parse(chord.toString()));
                    assertEquals(chord, Chord.parse(chord.write(Signs.MUSIC)));
                    seen++;
                }
            }
        }
        assertEquals(37 * 35 * 21, seen);
    }

    @Test
    void chordsAreEqualExactlyWhenTheyAreSpelledAlikeOverTheSameBass() {
        List<Chord> chords = List.of(
                Chord.parse("C"),
                Chord.parse("C/E"),
                Chord.parse("CM"),
                Chord.parse("B#"),
                Chord.parse("Cadd2"),
                Chord.parse("Cadd9"),
                Chord.parse("C2"),
                Chord.parse("C6"),
                Chord.parse("Am7/C"),
                Chord.parse("C/C"));
        for (Chord one : chords) {
            for (Chord other : chords) {
                assertEquals(one.toString().equals(other.toString()), one.equals(other), one + " " + other);
                assertTrue(!one.equals(other) || one.hashCode() == other.hashCode());
            }
        }
    }

    @Test
    void transposingAChordKeepsItsKindAndItsIntervals() throws IOException {
        for (String[] row : Table.rows("chord-kinds.csv")) {
            Chord chord =
                    new Chord(NoteName.C, ChordKind.parse(row[0].equals("maj") ? "" : row[0]), NoteName.parse("E"));
            for (Interval by : Written.intervals()) {
                Chord moved = chord.plus(by);
                assertEquals(chord.kind(), moved.kind());
                assertEquals(chord.tones().stream().map(tone -> tone.plus(by)).toList(), moved.tones());
                assertEquals(chord.bass().plus(by), moved.bass());
            }
        }
    }
}
