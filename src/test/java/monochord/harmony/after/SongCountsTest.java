package monochord.harmony.after;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.theory.Key;
import monochord.theory.Numeral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: counts invented for the test; those that travel with the program are held in the shell's tests. */
class SongCountsTest {
    private static final SongCounts INVENTED = SongCounts.parse("""
            # a remark
            Billboard	major	bVI	bVII	30	12	100
            Billboard	major	bVI	V	10	4	100
            RS200	major	bVI	V	8	6	50
            RS200	major	bVI	I	2	1	50
            RS200	major	V/V	V	9	3	50
            Billboard	major	II	V	7	5	100
            RS200	minor	bVI	i	40	11	20
            """);

    private static SongCounts.Backing backing(String from, String to, String key) {
        return INVENTED.backing(Numeral.parse(from), Numeral.parse(to), Key.parse(key))
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0} to {1} in {2}: {3} of {4} in {5} songs of {6}")
    @CsvSource({
        "bVI, bVII, C, 30, 40, 12, McGill Billboard",
        "bVI, bVII, Gb, 30, 40, 12, McGill Billboard",
        "bVI, V, C, 8, 10, 6, RS200",
        "bVImaj7, V7, C, 8, 10, 6, RS200",
        "V7/V, V, C, 7, 7, 5, McGill Billboard",
        "VI, i, A minor, 40, 40, 11, RS200"
    })
    void tellsTheCollectionWithTheMostSongs(
            String from, String to, String key, int times, int of, int songs, String title) {
        SongCounts.Backing backing = backing(from, to, key);
        assertEquals(
                List.of(times, of, songs, title),
                List.of(
                        backing.times(),
                        backing.of(),
                        backing.songs(),
                        backing.collection().title()));
    }

    @Test
    void fewSongsAreSaidToBeFew() {
        assertTrue(backing("bVI", "V", "C").isFromFewSongs());
        assertFalse(backing("bVI", "bVII", "C").isFromFewSongs());
        assertEquals(75, backing("bVI", "bVII", "C").percent());
    }

    /** A six-four and an augmented sixth are folded away in the counts; so nothing is told of them. */
    @ParameterizedTest
    @CsvSource({"bVI, Cad64", "Ger65, V", "IV, V", "bVI, V7/IV"})
    void tellsNothingThatWasNotCounted(String from, String to) {
        assertTrue(INVENTED.backing(Numeral.parse(from), Numeral.parse(to), Key.parse("C"))
                .isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            RS200 major I V 3 2      | a row must have 7 columns: RS200 major I V 3 2
            Other major I V 3 2 9    | no collection is called Other
            """)
    void refusesRowsOfAnotherForm(String row, String message) {
        String text = row.replace(' ', '\t');
        assertEquals(
                message,
                assertThrows(IllegalArgumentException.class, () -> SongCounts.parse(text))
                        .getMessage()
                        .replace('\t', ' '));
    }

    @Test
    void classicalCountsAreReadBesideThem() {
        ClassicalCounts scores =
                ClassicalCounts.parse("# a remark\nbVI\tV\t14\t178\niiø7\tV7\t110\t346\niio\tV7\t31\t114\n");
        Key key = Key.parse("D");
        assertEquals(14, scores.after(Numeral.parse("bVI").in(key), key).get(0).times());
        assertEquals(
                346, scores.after(Numeral.parse("iiø7").in(key), key).get(0).of());
        assertEquals(
                14, scores.after(Numeral.parse("bVImaj7").in(key), key).get(0).times());
        assertEquals(List.of(), scores.after(Numeral.parse("VI").in(Key.parse("Dm")), Key.parse("Dm")));
        assertThrows(IllegalArgumentException.class, () -> ClassicalCounts.parse("bVI\tV\t14"));
    }
}
