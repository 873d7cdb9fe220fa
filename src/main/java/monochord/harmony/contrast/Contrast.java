package monochord.harmony.contrast;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import monochord.theory.Chord;
import monochord.theory.Pitch;

/** What differs between a first and a second version. */
public record Contrast(Side first, Side second) {
    /**
     * Something in the place of something else.
     *
     * @param at its number in the row, from 0
     */
    public record Changed<T>(int at, T from, T to) {}

    /** Whether both are chords, and as many, so that one can be held against the other. */
    public boolean isChordByChord() {
        return !first.chords().isEmpty()
                && first.chords().size() == second.chords().size();
    }

    /** The chords that differ, where both sides have as many; else none. */
    public List<Changed<Chord>> chords() {
        return changed(Side::chords);
    }

    /** The notes of the line that differ, where both sides have as many; else none. */
    public List<Changed<Pitch>> notes() {
        return changed(Side::line);
    }

    /** The chords whose keys differ, where both sides have as many; else none. */
    public List<Changed<List<Pitch>>> keys() {
        return changed(Side::voicings);
    }

    private <T> List<Changed<T>> changed(Function<Side, List<T>> row) {
        List<T> from = row.apply(first);
        List<T> to = row.apply(second);
        return from.size() != to.size()
                ? List.of()
                : IntStream.range(0, from.size())
                        .filter(i -> !from.get(i).equals(to.get(i)))
                        .mapToObj(i -> new Changed<>(i, from.get(i), to.get(i)))
                        .toList();
    }

    /** The chords of the second that the first has not in this order, where one has more than the other. */
    public List<Chord> added() {
        return leftOver(first.chords(), second.chords());
    }

    /** The chords of the first that the second has not in this order. */
    public List<Chord> leftOut() {
        return leftOver(second.chords(), first.chords());
    }

    /** What is left of {@code row} without the longest row of elements that both have in the same order. */
    private static <T> List<T> leftOver(List<T> other, List<T> row) {
        int[][] common = common(other, row);
        List<T> left = new ArrayList<>();
        int i = 0;
        for (int j = 0; j < row.size(); j++) {
            while (i < other.size() && common[i + 1][j] == common[i][j]) {
                i++;
            }
            boolean shared = i < other.size() && other.get(i).equals(row.get(j)) && common[i][j] > common[i][j + 1];
            if (shared) {
                i++;
            } else {
                left.add(row.get(j));
            }
        }
        return List.copyOf(left);
    }

    /** The length of the longest common row from each pair of places on. */
    private static <T> int[][] common(List<T> one, List<T> other) {
        int[][] common = new int[one.size() + 1][other.size() + 1];
        for (int i = one.size() - 1; i >= 0; i--) {
            for (int j = other.size() - 1; j >= 0; j--) {
                common[i][j] = one.get(i).equals(other.get(j))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }
}
