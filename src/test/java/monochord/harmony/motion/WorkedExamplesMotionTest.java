package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import monochord.theory.Table;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The textbook examples of the file of worked examples, in which voices are led as their authors teach it; where only the
 * numerals are a book's, they were laid out by a program of its own that knows the rules from the same books, so two
 * readings of the rules meet here. What the strict rules find is known and listed; each was looked at by hand. Rows 113
 * and up are slices of scores, with the doublings of the orchestra or the piano, and are no lesson in part writing.
 *
 * <p>Source: that nothing is found, the rules in {@link Strictness}; the rows, the first line of the file.
 */
class WorkedExamplesMotionTest {
    private static final int TEXTBOOK_ROWS = 112;

    /**
     * By row. What the author passed over; in row 82 the fifths from the augmented sixth chord to its dominant, which
     * Integrated Music Theory, lesson 18a, tolerates.
     */
    private static final Map<Integer, String> KNOWN = Map.ofEntries(
            Map.entry(46, "1 overlap 01; 4 overlap 01"),
            Map.entry(51, "1 overlap 01"),
            Map.entry(53, "2 direct-fifths 03"),
            Map.entry(54, "3 overlap 12"),
            Map.entry(66, "1 contrary-octaves 03"),
            Map.entry(82, "1 parallel-fifths 02"),
            Map.entry(99, "1 overlap 01; 4 overlap 01"),
            Map.entry(101, "1 overlap 01"),
            Map.entry(108, "3 overlap 01"));

    /** One example of two chords or more. */
    private record Example(int row, String passage) {
        @Override
        public String toString() {
            return row + ": " + passage;
        }
    }

    static List<Example> examples() throws IOException {
        return Table.rows("worked-examples.csv").stream()
                .map(row -> new Example(Integer.parseInt(row[0]), row[4].replace(" / ", " | ")))
                .filter(example ->
                        example.row() <= TEXTBOOK_ROWS && example.passage().contains("|"))
                .toList();
    }

    @Test
    void enoughExamplesAreLookedAt() throws IOException {
        assertEquals(108, examples().size());
        int changes = examples().stream()
                .mapToInt(example -> example.passage().split("\\|").length - 1)
                .sum();
        assertEquals(537, changes);
        assertEquals(
                KNOWN.size(),
                examples().stream().filter(e -> KNOWN.containsKey(e.row())).count());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void nothingIsMarkedButWhatIsKnown(Example example) {
        assertEquals(KNOWN.getOrDefault(example.row(), ""), Marked.by(Strictness.CHORALE, example.passage()));
    }

    /** In a band only bass and top in octaves would be a fault: no row has that. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void bandPracticeFindsLess(Example example) {
        long faults = Arrays.stream(
                        Marked.by(Strictness.BAND, example.passage()).split("; "))
                .filter(mark -> !mark.isEmpty() && !mark.startsWith("remark"))
                .count();
        assertEquals(0, faults);
    }
}
