package monochord.harmony.voicing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.Stream;
import monochord.harmony.voicing.cost.Cost;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Table;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The formula likes what the textbooks print and what players play, and likes it less with a fault in it. Where a row of the
 * table fails, the formula is wrong.
 *
 * <p>Source: named in each row of {@code textbook-voicings.csv}; "custom" is common practice, no source.
 */
class TextbookVoicingsTest {
    private static final int ROWS = 46;
    /** How much more than the cheapest a good voicing may cost, for each change of chord. */
    private static final int LITTLE_MORE = 3;

    private record Example(VoicingTask task, List<Voicing> voicings, int faultAt, Voicing fault, String name) {
        static Example of(String[] row) {
            Key key = Key.parse(row[1]);
            List<Chord> chords = Stream.of(row[2].split(" - "))
                    .map(numeral -> Numeral.parse(numeral).in(key))
                    .toList();
            String[] fault = row[4].split(": ");
            return new Example(
                    VoicingTask.of(chords, key, VoicingStyle.find(row[0]).orElseThrow()),
                    Stream.of(row[3].split(" / ")).map(Example::voicing).toList(),
                    Integer.parseInt(fault[0]) - 1,
                    voicing(fault[1]),
                    String.join(" ", row[0], row[1], row[2]) + ", not with " + row[5]);
        }

        private static Voicing voicing(String pitches) {
            return new Voicing(
                    List.of(), Stream.of(pitches.split(" ")).map(Pitch::parse).toList());
        }

        List<Voicing> withTheFault() {
            List<Voicing> faulty = new ArrayList<>(voicings);
            faulty.set(faultAt, fault);
            return faulty;
        }

        boolean isCandidate(int index) {
            int[] keys = voicings.get(index).keys();
            return Candidates.of(task, index, keys.length).stream().anyMatch(one -> Arrays.equals(one, keys));
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Example> examples() throws IOException {
        return Table.rows("/monochord/harmony/voicing/textbook-voicings.csv").stream()
                .map(Example::of)
                .toList();
    }

    @Test
    @DisplayName("no row of the table is lost")
    void everyRowIsRead() throws IOException {
        assertEquals(ROWS, examples().size());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void isACandidateAndNearlyTheCheapest(Example example) {
        for (int i = 0; i < example.voicings().size(); i++) {
            assertTrue(example.isCandidate(i), "chord " + (i + 1));
        }
        Cost cost = example.task().cost(example.voicings());
        VoicedProgression best = VoicingSearch.best(example.task());
        int more = cost.total() - best.cost().total();
        int changes = example.voicings().size() - 1;
        assertTrue(more <= LITTLE_MORE * changes, () -> more + " more: " + cost + " " + best);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void costsMoreWithAFault(Example example) {
        Cost good = example.task().cost(example.voicings());
        Cost faulty = example.task().cost(example.withTheFault());
        assertTrue(good.total() < faulty.total(), () -> good + " " + faulty);
    }

    /**
     * Above a bass player the hands stay about middle C; what lies well there is one form in some keys and the other in the
     * rest, so the form changes with the key and not the place. Common practice, no source.
     */
    @Test
    @DisplayName("above a bass player each key has a form about middle C, at nearly the same cost")
    void theFormChangesWithTheKey() {
        for (String row : List.of("ii7 V7 Imaj7", "ii9 V13 Imaj9", "Imaj7 vi7 ii7 V7")) {
            List<VoicedProgression> ways = Key.majorKeys().stream()
                    .map(key -> VoicingSearch.best(VoicingTask.of(
                            Stream.of(row.split(" "))
                                    .map(numeral -> Numeral.parse(numeral).in(key))
                                    .toList(),
                            key,
                            VoicingStyle.WITH_BASS)))
                    .toList();
            IntSummaryStatistics costs =
                    ways.stream().mapToInt(way -> way.cost().total()).summaryStatistics();
            assertTrue(costs.getMax() - costs.getMin() <= LITTLE_MORE, () -> row + " " + costs);
            int high = Pitch.parse("C#4").midiNumber();
            int low = Pitch.parse("D3").midiNumber();
            for (VoicedProgression way : ways) {
                int lowest = way.voicings().get(0).bass().midiNumber();
                assertTrue(lowest >= low && lowest <= high, way::toString);
            }
        }
    }
}
