package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import monochord.text.SequenceDifference.Edit;
import monochord.text.SequenceDifference.EditKind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: worked by hand. */
class SequenceDifferenceTest {
    private static String written(String before, String after) {
        return SequenceDifference.between(letters(before), letters(after)).stream()
                .map(change -> (change.fate() == EditKind.KEPT ? "" : change.fate() == EditKind.GONE ? "-" : "+")
                        + change.element())
                .collect(Collectors.joining(" "));
    }

    private static List<String> letters(String text) {
        return text == null ? List.of() : List.of(text.split(" "));
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C F G C | C F G C | C F G C
            C F G   | C G     | C -F G
            C G     | C F G   | C +F G
            C F     | C G     | C -F +G
                    | C       | +C
            C       |         | -C
            C F C G | F C     | -C F C -G
            """)
    void tellsWhatBecameOfEach(String before, String after, String changes) {
        assertEquals(changes, written(before, after));
    }

    @Test
    @DisplayName(
            "what is kept and gone is the first, what is kept and new the second, and no more is kept in the other direction")
    void givesBackBoth() {
        List<List<Integer>> rows = rows(4);
        for (List<Integer> one : rows) {
            for (List<Integer> other : rows) {
                List<Edit<Integer>> changes = SequenceDifference.between(one, other);
                assertEquals(one, left(changes, EditKind.NEW));
                assertEquals(other, left(changes, EditKind.GONE));
                assertEquals(kept(changes), kept(SequenceDifference.between(other, one)));
            }
        }
    }

    private static List<Integer> left(List<Edit<Integer>> changes, EditKind without) {
        return changes.stream()
                .filter(change -> change.fate() != without)
                .map(Edit::element)
                .toList();
    }

    private static long kept(List<Edit<Integer>> changes) {
        return changes.stream().filter(change -> change.fate() == EditKind.KEPT).count();
    }

    /** Every row of up to so many elements out of two. */
    private static List<List<Integer>> rows(int longest) {
        List<List<Integer>> rows = new ArrayList<>(List.of(List.of()));
        for (int length = 1; length <= longest; length++) {
            int size = length;
            IntStream.range(0, 1 << length)
                    .mapToObj(bits -> IntStream.range(0, size)
                            .mapToObj(at -> bits >> at & 1)
                            .toList())
                    .forEach(rows::add);
        }
        return rows;
    }
}
