package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TranspositionTest {
    /**
     * Source: Integrated Music Theory, lesson 12a, CC BY-NC-SA 4.0; the alto flute, which that lesson writes a fifth up,
     * is written a fourth above what sounds.
     */
    @ParameterizedTest(name = "{0} is written {1} above what sounds")
    @CsvSource(delimiter = '|', textBlock = """
            Bb clarinet     | M2  | D  | C  | G
            Bb trumpet      | M2  | D  | C  | G
            soprano sax     | M2  | D  | C  | G
            tenor sax       | M9  | D  | C  | G
            bass clarinet   | M9  | D  | C  | G
            Eb alto sax     | M6  | A  | G  | D
            Eb baritone sax | M13 | A  | G  | D
            Eb clarinet     | -m3 | A  | G  | D
            F horn          | P5  | G  | F  | C
            English horn    | P5  | G  | F  | C
            A clarinet      | m3  | Eb | Db | Ab
            alto flute      | P4  | F  | Eb | Bb
            piccolo         | -P8 | C  | Bb | F
            guitar          | P8  | C  | Bb | F
            double bass     | P8  | C  | Bb | F
            contrabassoon   | P8  | C  | Bb | F
            flute           | P1  | C  | Bb | F
            oboe            | P1  | C  | Bb | F
            bassoon         | P1  | C  | Bb | F
            strings         | P1  | C  | Bb | F
            trombone        | P1  | C  | Bb | F
            tuba            | P1  | C  | Bb | F
            piano           | P1  | C  | Bb | F
            voice           | P1  | C  | Bb | F
            """)
    void instrumentsReadAtTheirDistance(String name, String above, String forC, String forBb, String forF) {
        Instrument instrument = Instrument.parse(name);
        assertEquals(above, instrument.writtenAbove().toString());
        assertEquals(
                forC + " major",
                Transposition.written(Key.parse("C"), instrument).toString());
        assertEquals(
                forBb + " major",
                Transposition.written(Key.parse("Bb"), instrument).toString());
        assertEquals(
                forF + " major",
                Transposition.written(Key.parse("F"), instrument).toString());
    }

    /** Source: arithmetic on the signatures: two sharps more for B flat, three for E flat, one for F. */
    @ParameterizedTest(name = "{0}: {1} sharps more")
    @CsvSource({"Bb, 2", "Eb, 3", "F, 1", "A, -3", "G, -1", "concert, 0"})
    void writtenKeysHaveSoManySharpsMore(String instrument, int more) {
        for (Key key : List.of(Key.parse("C"), Key.parse("F"), Key.parse("G"), Key.parse("A minor"))) {
            assertEquals(
                    key.signature() + more,
                    Transposition.written(key, Instrument.parse(instrument)).signature());
        }
    }

    /** Source: arithmetic: sounding key = shape + fret in half steps. */
    @ParameterizedTest(name = "{0} shapes at fret {1} sound in {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C | 0 | C
            C | 1 | Db
            C | 2 | D
            C | 3 | Eb
            C | 4 | E
            C | 5 | F
            C | 6 | F#
            C | 7 | G
            C | 8 | Ab
            C | 9 | A
            D | 0 | D
            D | 1 | Eb
            D | 2 | E
            D | 3 | F
            D | 4 | F#
            D | 5 | G
            D | 6 | Ab
            D | 7 | A
            D | 8 | Bb
            D | 9 | B
            E | 0 | E
            E | 1 | F
            E | 2 | F#
            E | 3 | G
            E | 4 | Ab
            E | 5 | A
            E | 6 | Bb
            E | 7 | B
            E | 8 | C
            E | 9 | Db
            G | 0 | G
            G | 1 | Ab
            G | 2 | A
            G | 3 | Bb
            G | 4 | B
            G | 5 | C
            G | 6 | Db
            G | 7 | D
            G | 8 | Eb
            G | 9 | E
            A | 0 | A
            A | 1 | Bb
            A | 2 | B
            A | 3 | C
            A | 4 | Db
            A | 5 | D
            A | 6 | Eb
            A | 7 | E
            A | 8 | F
            A | 9 | F#
            """)
    void aCapoRaisesTheShapes(String shapes, int fret, String sounding) {
        assertEquals(fret, Transposition.fret(Key.parse(sounding), Key.parse(shapes)));
        assertTrue(Transposition.shapes(Key.parse(sounding), fret).tonic().soundsLike(NoteName.parse(shapes)));
        assertEquals(
                shapes, Transposition.shapes(Key.parse(sounding), fret).tonic().toString());
    }

    @Test
    void everyWrittenKeyIsOneThatIsPrinted() {
        for (Instrument instrument : Instrument.values()) {
            Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream()).forEach(key -> {
                Key written = Transposition.written(key, instrument);
                assertTrue(written.isInUse(), key + " for " + instrument);
                assertTrue(written.tonic().soundsLike(key.tonic().plus(instrument.writtenAbove())));
                assertEquals(key.mode(), written.mode());
            });
        }
    }

    @Test
    void everyCapoComesRound() {
        for (Key sounding : Key.majorKeys()) {
            for (int fret = 0; fret <= Transposition.HIGHEST_FRET; fret++) {
                assertEquals(fret, Transposition.fret(sounding, Transposition.shapes(sounding, fret)));
            }
        }
        assertEquals(
                "fret must be from 0 to 11, not 12",
                assertThrows(IllegalArgumentException.class, () -> Transposition.shapes(Key.parse("C"), 12))
                        .getMessage());
    }

    @Test
    void aKeyNobodyPrintsIsRespelled() {
        assertEquals("Ab major", Transposition.inUse(Key.parse("G# major")).toString());
        assertEquals("E major", Transposition.inUse(Key.parse("Fb major")).toString());
        assertEquals(new Key(NoteName.parse("Eb"), Mode.DORIAN), Transposition.inUse(Key.parse("Eb dorian")));
    }
}
