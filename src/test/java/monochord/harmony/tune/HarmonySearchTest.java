package monochord.harmony.tune;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.key.Counted;
import monochord.harmony.melody.Melody;
import monochord.harmony.tune.Harmonisation.HarmonisedSlot;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.note.Interval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HarmonySearchTest {
    private static HarmonySearch search(String tune, String key) {
        Melody melody = Melody.parse(tune);
        return new HarmonySearch(HarmonicMetre.of(melody).slots(melody), Key.parse(key), Counted.KEYS.chords());
    }

    private static double worth(HarmonySearch search, int[] way) {
        double worth = search.own(0, way[0]);
        for (int t = 1; t < way.length; t++) {
            worth += search.change(t, way[t - 1], way[t]) + search.own(t, way[t]);
        }
        return worth;
    }

    /** Every way through four slots, counted through like a number. */
    private static double[][] bestThroughEach(HarmonySearch search) {
        int size = search.plain().size();
        double[][] best = new double[4][size];
        Arrays.stream(best).forEach(row -> Arrays.fill(row, Double.NEGATIVE_INFINITY));
        int[] way = new int[4];
        for (int number = 0; number < size * size * size * size; number++) {
            int left = number;
            for (int t = 0; t < 4; t++) {
                way[t] = left % size;
                left /= size;
            }
            double worth = worth(search, way);
            for (int t = 0; t < 4; t++) {
                best[t][way[t]] = Math.max(best[t][way[t]], worth);
            }
        }
        return best;
    }

    /** Tunes of ours, from memory. */
    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource({
        "| E4 D C D | E F G:2 |, C major",
        "| F#4 A4 D5 C5 | B4 G4 A4 D4 |, D major",
        "| A4 C5 E5 G#4 | F4 D4 E4 A4 |, A minor",
        "| D4 F4 A4 B4 | C5 A4 D5:2 |, D dorian"
    })
    void equalsTryingEveryWay(String tune, String key) {
        HarmonySearch search = search(tune, key);
        double[][] tried = bestThroughEach(search);
        double[][] found = search.totals();
        for (int t = 0; t < 4; t++) {
            for (int i = 0; i < tried[t].length; i++) {
                assertEquals(tried[t][i], found[t][i], 1e-9);
            }
        }
        double best = Arrays.stream(tried[0]).max().orElseThrow();
        assertEquals(best, worth(search, search.best()), 1e-9);
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            2/4  | 2   | 1
            3/4  | 3   | 3
            4/4  | 4   | 2
            2/2  | 4   | 2
            6/8  | 3   | 3/2
            9/8  | 9/2 | 3/2
            12/8 | 6   | 3/2
            3/8  | 3/2 | 3/2
            5/4  | 5   | 5
            """)
    void changesChordsWhereTheMetreDoes(String metre, String bar, String slot) {
        HarmonicMetre read = HarmonicMetre.parse(metre);
        assertEquals(bar, read.bar().toString());
        assertEquals(slot, read.slot().toString());
    }

    /** Source: worked out by hand; the pick-up stands before 0. */
    @Test
    void countsFromTheFirstFullBar() {
        Melody melody = Melody.parse("G4 | C5 C5 E5 D5 | C5:3");
        List<HarmonisedSlot> slots = Harmonisation.of(
                        melody, Key.parse("C"), HarmonicMetre.of(melody), Counted.KEYS.chords())
                .slots();
        assertEquals(
                "-1.0 1, 0.0 2, 2.0 2, 4.0 2, 6.0 1",
                slots.stream().map(slot -> slot.start() + " " + slot.beats()).collect(Collectors.joining(", ")));
    }

    /** Source: worked out by hand from the notes. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '!', textBlock = """
            | C4:2 E4:2 | G4:2 F4:2 | D4:2 B4:2 | C5:4 | ! 0 ! C is its root.
            | C4:2 E4:2 | G4:2 F4:2 | D4:2 B4:2 | C5:4 | ! 5 ! B is its third. It leads home to C.
            | C4:2 E4:2 | G4:2 F4:2 | D4:2 B4:2 | C5:4 | ! 7 ! C is its root. The tune ends at home.
            | C4 D4 E4 F4 | G4 F4 G4:2 | C5:4 | ! 2 ! It holds every note here: G and F.
            """)
    void saysWhy(String tune, int slot, String why) {
        Melody melody = Melody.parse(tune);
        HarmonisedSlot found = Harmonisation.of(melody, Key.parse("C"), HarmonicMetre.of(melody), Counted.KEYS.chords())
                .slots()
                .get(slot);
        String said = found.offer().why().stream().map(Phrase::toString).collect(Collectors.joining(" "));
        assertTrue(said.startsWith(why) || said.equals(why), () -> found.offer().chord() + ": " + said);
    }

    @Test
    void findsChordsInEveryModeAndKey() {
        Melody melody = Melody.parse("| C4 D4 E4 F4 | G4:2 C4:2 |");
        for (Mode mode : Mode.values()) {
            for (Key major : Key.majorKeys()) {
                Key key = new Key(major.tonic(), mode);
                Melody there = melody.plus(Interval.simple(major.tonic().fifths()));
                Harmonisation found = Harmonisation.of(there, key, HarmonicMetre.of(there), Counted.KEYS.chords());
                assertEquals(
                        key.tonic(),
                        found.slots()
                                .get(found.slots().size() - 1)
                                .offer()
                                .chord()
                                .root(),
                        key.toString());
            }
        }
    }

    @Test
    void refusesAMetreThatIsNotThatOfTheTune() {
        Melody melody = Melody.parse("| C4 D4 E4 F4 | G4:4 |");
        assertEquals(
                "the tune has bars of 4, not of 3",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> Harmonisation.of(
                                        melody, Key.parse("C"), HarmonicMetre.parse("3/4"), Counted.KEYS.chords()))
                        .getMessage());
    }
}
