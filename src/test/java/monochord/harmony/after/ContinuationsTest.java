package monochord.harmony.after;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.Borrowing;
import monochord.theory.Key;
import monochord.theory.Numeral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContinuationsTest {
    private static final List<String> IN_MAJOR = List.of(
            "I", "ii", "iii", "IV", "V", "vi", "viio", "V7", "Vsus4", "V7/V", "V7/vi", "viio7/V", "bVI", "bVImaj7",
            "bVII", "bIII", "iv", "iv7", "iio", "iiø7", "viio7", "bII", "N6", "i", "v", "Ger65", "It6", "Fr43", "Cad64",
            "I6", "V65", "II");
    private static final List<String> IN_MINOR =
            List.of("i", "iio", "III", "iv", "v", "V", "VI", "VII", "viio", "V7/iv", "Vsus4", "I", "IV", "bII");

    private static List<Continuation> ways(String numeral, Key key) {
        return Continuations.ways(Numeral.parse(numeral), key, SongCounts.NONE);
    }

    private static Continuation way(String from, String to, String key) {
        return Continuations.way(Numeral.parse(from), Numeral.parse(to), Key.parse(key), SongCounts.NONE)
                .orElseThrow();
    }

    /**
     * Sources: Open Music Theory (2014), pages "modalMixture", "popRockHarmony-plagal", "popRockHarmony-minor",
     * "cadenceTypes", "appliedChords"; Integrated Music Theory, lesson 11b for the deceptive cadence. The suspension as the
     * way back: common practice, no source.
     */
    @ParameterizedTest(name = "{0} to {1} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            bVI    | bVII  | C | it stays borrowed: the walk up ♭VI ♭VII I
            bVII   | I     | C | the last step of the walk up ♭VI ♭VII I
            bVII   | IV    | C | the double plagal way home: ♭VII IV I
            bVI    | V     | C | the root sinks a half step onto the dominant
            bVI    | bIII  | E | it stays borrowed: fourths falling all the way home, ♭VI ♭III ♭VII IV I
            bVI    | Vsus4 | C | back by a suspension: C stays as its fourth, then falls to B
            bVI    | V7sus4 | Eb | back by a suspension: E♭ stays as its fourth, then falls to D
            Vsus4  | V     | C | the suspended fourth falls to its third, B
            V      | bVI   | C | deceptive: ♭VI where the tonic was expected
            V      | VI    | C minor | deceptive: VI where the tonic was expected
            V      | vi    | C | deceptive: vi where the tonic was expected
            iv     | I     | C | the minor plagal way home: the lowered sixth sinks a half step to the fifth
            IV     | iv    | C | its third slips down a half step on the way home: IV iv I
            V7/V   | V     | C | it is the dominant of G and resolves there
            viio7/V | V    | C | it is the leading-note chord of G and resolves there
            Ger65  | V     | C | A♭ and F♯ open by half steps onto G
            Cad64  | V     | C | sixth and fourth above the bass fall to fifth and third
            VI     | VII   | A minor | the walk up VI VII i
            I      | V7/ii | C | it brings C♯ and leads on to Dm, ii
            N6     | V     | C | the lowered second before the dominant, as the Neapolitan chord does
            """)
    void saysWhy(String from, String to, String key, String reason) {
        assertEquals(reason, way(from, to, key).reason().toString());
    }

    /** Source: which moves lead in Open Music Theory's lists of cadences and loops; the order by weight is ours. */
    @ParameterizedTest(name = "after {0} in {1} first {2}")
    @CsvSource({
        "V, C, I",
        "Vsus4, C, V",
        "V7/V, C, V",
        "iv, C, I",
        "ii, C, V",
        "iio, C, V",
        "bVI, C, bVII",
        "Ger65, C, V",
        "Cad64, C, V",
        "viio7, C, I",
        "bII, C, V",
        "V, A minor, i",
        "V7/iv, A minor, iv"
    })
    void putsTheWayThatIsExpectedFirst(String from, String key, String first) {
        assertEquals(first, ways(from, Key.parse(key)).get(0).numeral().toString());
    }

    @Test
    void theWaysAreTheSameInEveryKey() {
        int seen = 0;
        for (Key key : Key.majorKeys()) {
            seen += alike(IN_MAJOR, key, Key.parse("C"));
        }
        for (Key key : Key.minorKeys()) {
            seen += alike(IN_MINOR, key, Key.parse("C minor"));
        }
        assertTrue(seen > 4000, "only " + seen);
    }

    private static int alike(List<String> numerals, Key key, Key model) {
        int seen = 0;
        for (String numeral : numerals) {
            List<Continuation> here = ways(numeral, key);
            assertEquals(names(ways(numeral, model)), names(here), () -> numeral + " in " + key);
            assertTrue(here.size() >= 3, () -> numeral + " in " + key + " leads only to " + names(here));
            seen += here.size();
        }
        return seen;
    }

    private static List<String> names(List<Continuation> ways) {
        return ways.stream().map(way -> way.numeral() + " " + way.weight()).toList();
    }

    @Test
    void everyWayHasAReasonAndLeadsToAnotherChordTheBestFirst() {
        for (Key key : Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList()) {
            for (String numeral : key.isMinor() ? IN_MINOR : IN_MAJOR) {
                List<Continuation> ways = ways(numeral, key);
                for (Continuation way : ways) {
                    assertFalse(way.chord().equals(Numeral.parse(numeral).in(key)), () -> numeral + " " + way);
                    assertTrue(
                            way.reason().toString().matches("[^!.]{10,90}"),
                            () -> way.reason().toString());
                    assertFalse(
                            way.reason().toString().matches(".*[{}#].*|.*[A-GIV]b.*"),
                            () -> way.reason().toString());
                    assertEquals(way.numeral().in(key), way.chord());
                }
                assertEquals(
                        ways.stream().map(Continuation::chord).distinct().count(),
                        ways.size(),
                        () -> numeral + " in " + key);
                for (int i = 1; i < ways.size(); i++) {
                    assertTrue(ways.get(i - 1).score() >= ways.get(i).score());
                }
            }
        }
    }

    @Test
    void everyBorrowedChordIsReachedAndLeft() {
        for (Key key : Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList()) {
            for (Borrowing.Borrowed borrowed : Borrowing.table(key)) {
                BorrowedChordContext setting = BorrowedChordContext.of(borrowed, key);
                assertFalse(setting.approach().isEmpty(), () -> "nothing leads to " + borrowed.numeral());
                assertFalse(setting.exit().isEmpty(), () -> "nothing leads on from " + borrowed.numeral());
            }
        }
    }

    /** Source: Open Music Theory (2014), "modalMixture"; Integrated Music Theory, lesson 16a: what stands around each. */
    @ParameterizedTest(name = "{0} comes from {1} and goes to {2}")
    @CsvSource({
        "bVI, V, V",
        "bVI, I, bVII",
        "bVII, I, IV",
        "iv, IV, I",
        "iv, I, V",
        "iiø7, ii, V",
        "viio7, ii, I",
        "bII, iv, V"
    })
    void aBorrowedChordStandsWhereTheBooksPutIt(String numeral, String before, String behind) {
        for (Key key : Key.majorKeys()) {
            BorrowedChordContext setting = BorrowedChordContext.of(
                    Borrowing.borrowed(Numeral.parse(numeral).in(key), key), key);
            assertTrue(setting.approach().stream()
                    .anyMatch(way -> way.start().toString().equals(before)));
            assertTrue(setting.exit().stream()
                    .anyMatch(way -> way.numeral().toString().equals(behind)));
        }
    }
}
