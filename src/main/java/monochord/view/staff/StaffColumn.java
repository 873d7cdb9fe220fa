package monochord.view.staff;

import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/**
 * What sounds at once.
 *
 * @param upper on the upper staff, or the only one
 * @param lower on the lower staff
 * @param above what stands over it, a chord symbol; perhaps nothing
 * @param below what stands under it, a numeral; perhaps nothing
 * @param endsBar whether a bar line follows
 */
public record StaffColumn(
        List<Pitch> upper, List<Pitch> lower, NoteValue value, Phrase above, Phrase below, boolean endsBar) {
    public StaffColumn {
        upper = upper.stream().sorted().toList();
        lower = lower.stream().sorted().toList();
    }

    /** Notes with nothing over or under them. */
    public static StaffColumn of(List<Pitch> pitches, NoteValue value) {
        return new StaffColumn(pitches, List.of(), value, Phrase.NOTHING, Phrase.NOTHING, false);
    }

    /** Named over and under. */
    public StaffColumn named(Phrase over, Phrase under) {
        return new StaffColumn(upper, lower, value, over, under, endsBar);
    }

    /** With a bar line behind it. */
    public StaffColumn endingBar() {
        return new StaffColumn(upper, lower, value, above, below, true);
    }

    /** Each note on the staff on which it stands nearer: from middle C up on the upper one. */
    StaffColumn split(int middle) {
        return new StaffColumn(
                upper.stream().filter(pitch -> pitch.staffPosition() >= middle).toList(),
                upper.stream().filter(pitch -> pitch.staffPosition() < middle).toList(),
                value,
                above,
                below,
                endsBar);
    }
}
