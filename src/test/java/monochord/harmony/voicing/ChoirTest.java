package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The choir sings the textbooks' progressions without a textbook fault. */
class ChoirTest {
    private static List<List<Pitch>> voices(String key, String numerals) {
        Key in = Key.parse(key);
        List<Chord> chords = Stream.of(numerals.split(" - "))
                .map(numeral -> Numeral.parse(numeral).in(in))
                .toList();
        return VoicingSearch.best(VoicingTask.of(chords, in, VoicingStyle.CHOIR)).voicings().stream()
                .map(Voicing::pitches)
                .toList();
    }

    /**
     * Source: Integrated Music Theory (open university course text), lessons 7a, 11a to 11d, 14e and 17b (numerals
     * only, which are facts); Open Music Theory, 1st edition (2014), keyboard exercises and cadences (CC BY-SA 4.0).
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | V - I - V7 - I
            C  | iii - vi - ii - V - I
            C  | ii7 - V7 - I - IV6 - viio - I
            C  | I - ii6 - V7 - I
            C  | I - vi - ii - V - I
            C  | I - vi7 - ii - V7 - I
            C  | I - V - vi
            C  | I - IV - V - I
            C  | I - V - I
            C  | I - V7 - I
            C  | I - ii6 - V - I
            C  | I - V6 - IV6 - V7 - I
            C  | I - V - I64 - V7 - I
            C  | I - V6 - vi - iii6 - IV - I6 - IV - V
            C  | I - V6 - IV6 - iii6 - ii6 - I6 - viio6 - I
            C  | ii7 - V43 - I
            C  | I - V6 - V43/V - V - ii65 - V - I
            Bm | i - iv6 - i6 - V43 - i - V7 - i
            Bb | I - V42 - I6 - IV6 - Cad64 - V7 - I
            Cm | i - iv - V42 - i6 - iv - V - i
            C  | Cad64 - V - I
            C  | Cad64 - V7 - I
            C  | Vsus4 - V - I
            C  | V - Cad64 - Vsus4 - V - I
            """)
    void singsWithoutAFault(String key, String numerals) {
        List<List<Pitch>> voices = voices(key, numerals);
        assertEquals(List.of(), Checker.faults(voices), voices::toString);
    }

    /** Common practice, no source: three progressions that everybody plays. */
    @ParameterizedTest(name = "{0} in all keys")
    @CsvSource(delimiter = '|', textBlock = """
            I - IV - V - I
            I - vi - ii - V7 - I
            I - V - vi - IV - I64 - V7 - I
            """)
    void singsInEveryKeyWithoutAFault(String numerals) {
        for (Key key : Key.majorKeys()) {
            assertEquals(List.of(), Checker.faults(voices(key.toString(), numerals)), key::toString);
        }
    }

    /** Each row has one fault, laid out by us. Source for what they are: Integrated Music Theory, lesson 10b. */
    @ParameterizedTest(name = "the checker finds {1} in {0}")
    @CsvSource(delimiter = '|', textBlock = """
            C3 E3 G3 E4 / F2 F3 A3 F4 | parallel 0
            D3 A3 D4 F4 / C3 G3 E4 G4 | parallel 7
            F3 C4 / G2 D4             | contrary 7
            F2 C4 F4 A4 / C3 C4 G4 C5 | hidden 0
            F#2 C4 A4 D5 / G2 D4 G4 D5 | unequal
            """)
    void theCheckerFindsEachFault(String notes, String fault) {
        List<List<Pitch>> chords = Stream.of(notes.split(" / "))
                .map(chord -> Stream.of(chord.split(" ")).map(Pitch::parse).toList())
                .toList();
        List<String> found = Checker.faults(chords);
        assertTrue(found.stream().anyMatch(one -> one.startsWith(fault)), found::toString);
    }

    /**
     * B rises to C and F falls to E, G stays: Open Music Theory (2014), "tendencyTonesFunctionalDissonances" and
     * "bassoContinuo"; laid out by hand.
     */
    @Test
    @DisplayName("leading notes rise and sevenths fall")
    void tendenciesAreKept() {
        assertEquals(
                "[[G2, G3, F4, B4], [C3, G3, E4, C5]]", voices("C", "V7 - I").toString());
    }
}
