package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CapoTest {
    private static List<Capo> capos(String chords, String key) {
        return Capo.forSounding(Progression.parse(chords, Key.parse(key)));
    }

    /** Source: arithmetic, sounding key = shapes + fret in half steps. */
    @ParameterizedTest(name = "{1} sounds with {0} shapes at fret {2}")
    @CsvSource({
        "G, Bb, 3",
        "C, Eb, 3",
        "D, F, 3",
        "G, Ab, 1",
        "A, B, 2",
        "C, C, 0",
        "E, F, 1",
        "C, Db, 1",
        "D, E, 2",
        "E, Ab, 4",
        "A, Eb, 6",
        "G, C, 5",
        "D, G, 5",
        "A, Am, -1"
    })
    void theFretIsTheDistance(String shapes, String sounding, int fret) {
        List<Integer> frets = capos("1", sounding).stream()
                .filter(capo -> capo.shapes().key().equals(Key.parse(shapes)))
                .map(Capo::fret)
                .toList();
        assertEquals(fret < 0 ? List.of() : List.of(fret), frets);
    }

    /** Open shapes C D E G A, Am Dm Em: common practice, no source; counted by hand. */
    @ParameterizedTest(name = "{0} in {1}: capo {2}")
    @CsvSource(delimiter = '|', textBlock = """
            Bb F Gm Eb    | Bb  | 3 | G D Em C   | every chord rings open; low, so most of the neck stays
            B E F#        | B   | 2 | A D E      | every chord rings open; low, so most of the neck stays
            C G Am        | C   | 0 | C G Am     | every chord rings open; no capo needed
            Ab Db Eb      | Ab  | 1 | G C D      | every chord rings open; low, so most of the neck stays
            Bbm Gb        | Bbm | 1 | Am F       | all open but F; low, so most of the neck stays
            Gm Cm         | Gm  | 3 | Em Am      | every chord rings open; low, so most of the neck stays
            """)
    void theBestComesFirstAndSaysWhy(String chords, String key, int fret, String shapes, String reason) {
        Capo best = capos(chords, key).get(0);
        assertEquals(fret, best.fret());
        assertEquals(shapes, best.shapes().toString());
        assertEquals(reason, best.reason().toString());
    }

    @Test
    void everyShapeSoundsAsTheKeyAsked() {
        for (Key key : Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList()) {
            List<Capo> capos = Capo.forSounding(Progression.parse(key.isMinor() ? "1 4 5" : "4 1 5 b6", key));
            assertEquals(key.isMinor() ? 3 : 5, capos.size());
            for (Capo capo : capos) {
                assertTrue(capo.fret() >= 0 && capo.fret() <= Transposition.HIGHEST_FRET);
                int sounding = capo.shapes().key().tonic().pitchClass() + capo.fret();
                assertEquals(key.tonic().pitchClass(), sounding % 12);
                assertEquals(
                        Progression.parse(key.isMinor() ? "1 4 5" : "4 1 5 b6", key)
                                .numerals(monochord.theory.note.Signs.ASCII),
                        capo.shapes().numerals(monochord.theory.note.Signs.ASCII));
            }
        }
    }
}
