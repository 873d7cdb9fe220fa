package monochord.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where two sequences differ: the fewest elements taken out and put in that turn one into the other, found as their longest
 * common subsequence.
 *
 * <p>Source: R. A. Wagner and M. J. Fischer, The string-to-string correction problem, Journal of the ACM 21(1), 1974, from
 * memory.
 */
public final class SequenceDifference {
    /** What became of an element. */
    public enum EditKind {
        KEPT,
        GONE,
        NEW
    }

    /** An element and what became of it. */
    public record Edit<T>(EditKind fate, T element) {}

    private SequenceDifference() {}

    /**
     * All elements in order, those that are gone before those that are new where they meet. Takes time and room in
     * proportion to one length times the other.
     */
    public static <T> List<Edit<T>> between(List<T> before, List<T> after) {
        int[][] common = common(before, after);
        List<Edit<T>> changes = new ArrayList<>();
        int i = before.size();
        int j = after.size();
        while (i > 0 || j > 0) {
            if (i > 0 && j > 0 && before.get(i - 1).equals(after.get(j - 1))) {
                changes.add(new Edit<>(EditKind.KEPT, before.get(--i)));
                j--;
            } else if (j > 0 && (i == 0 || common[i][j - 1] >= common[i - 1][j])) {
                changes.add(new Edit<>(EditKind.NEW, after.get(--j)));
            } else {
                changes.add(new Edit<>(EditKind.GONE, before.get(--i)));
            }
        }
        Collections.reverse(changes);
        return changes;
    }

    /** How many elements the first {@code i} and the first {@code j} have in common, at {@code [i][j]}. */
    private static <T> int[][] common(List<T> before, List<T> after) {
        int[][] common = new int[before.size() + 1][after.size() + 1];
        for (int i = 1; i <= before.size(); i++) {
            for (int j = 1; j <= after.size(); j++) {
                common[i][j] = before.get(i - 1).equals(after.get(j - 1))
                        ? common[i - 1][j - 1] + 1
                        : Math.max(common[i - 1][j], common[i][j - 1]);
            }
        }
        return common;
    }
}
