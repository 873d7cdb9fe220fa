package monochord.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Where two texts differ, line by line: the fewest lines taken out and put in that turn one into the other, found as their
 * longest common subsequence.
 *
 * <p>Source: R. A. Wagner and M. J. Fischer, The string-to-string correction problem, Journal of the ACM 21(1), 1974, from
 * memory.
 */
public final class LineDifference {
    /** Beyond so many cells of the table everything counts as changed, so that no text costs more than a blink. */
    private static final int MOST_CELLS = 1 << 20;

    /** What became of a line. */
    public enum Fate {
        KEPT,
        GONE,
        NEW
    }

    /** A line and what became of it. */
    public record Change(Fate fate, String line) {}

    private LineDifference() {}

    /** All lines in order, those that are gone before those that are new where they meet. */
    public static List<Change> of(String before, String after) {
        List<String> old = before.lines().toList();
        List<String> now = after.lines().toList();
        return (long) (old.size() + 1) * (now.size() + 1) > MOST_CELLS ? replaced(old, now) : walk(old, now);
    }

    private static List<Change> replaced(List<String> old, List<String> now) {
        List<Change> changes = new ArrayList<>();
        old.forEach(line -> changes.add(new Change(Fate.GONE, line)));
        now.forEach(line -> changes.add(new Change(Fate.NEW, line)));
        return changes;
    }

    /** How many lines the first {@code i} and the first {@code j} have in common, at {@code [i][j]}. */
    private static int[][] common(List<String> old, List<String> now) {
        int[][] common = new int[old.size() + 1][now.size() + 1];
        for (int i = 1; i <= old.size(); i++) {
            for (int j = 1; j <= now.size(); j++) {
                common[i][j] = old.get(i - 1).equals(now.get(j - 1))
                        ? common[i - 1][j - 1] + 1
                        : Math.max(common[i - 1][j], common[i][j - 1]);
            }
        }
        return common;
    }

    private static List<Change> walk(List<String> old, List<String> now) {
        int[][] common = common(old, now);
        List<Change> changes = new ArrayList<>();
        int i = old.size();
        int j = now.size();
        while (i > 0 || j > 0) {
            if (i > 0 && j > 0 && old.get(i - 1).equals(now.get(j - 1))) {
                changes.add(new Change(Fate.KEPT, old.get(--i)));
                j--;
            } else if (j > 0 && (i == 0 || common[i][j - 1] >= common[i - 1][j])) {
                changes.add(new Change(Fate.NEW, now.get(--j)));
            } else {
                changes.add(new Change(Fate.GONE, old.get(--i)));
            }
        }
        Collections.reverse(changes);
        return changes;
    }
}
