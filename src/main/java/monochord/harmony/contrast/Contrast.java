package monochord.harmony.contrast;

import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import monochord.text.SequenceDifference;
import monochord.text.SequenceDifference.EditKind;
import monochord.theory.Chord;
import monochord.theory.note.Pitch;

/** What differs between a first and a second version. */
public record Contrast(ComparedVersion first, ComparedVersion second) {
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
        return changed(ComparedVersion::chords);
    }

    /** The notes of the line that differ, where both sides have as many; else none. */
    public List<Changed<Pitch>> notes() {
        return changed(ComparedVersion::line);
    }

    /** The chords whose keys differ, where both sides have as many; else none. */
    public List<Changed<List<Pitch>>> keys() {
        return changed(ComparedVersion::voicings);
    }

    private <T> List<Changed<T>> changed(Function<ComparedVersion, List<T>> row) {
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
        return with(EditKind.NEW);
    }

    /** The chords of the first that the second has not in this order. */
    public List<Chord> leftOut() {
        return with(EditKind.GONE);
    }

    private List<Chord> with(EditKind fate) {
        return SequenceDifference.between(first.chords(), second.chords()).stream()
                .filter(change -> change.fate() == fate)
                .map(SequenceDifference.Edit::element)
                .toList();
    }
}
