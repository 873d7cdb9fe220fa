package monochord.view.staff;

import java.util.List;
import monochord.text.Phrase;

/**
 * Music to be engraved.
 *
 * @param title what it is, for whoever cannot see it
 * @param signature signs of the key, sharps positive, from −7 to 7
 * @param grand whether two staves are joined, treble and bass
 */
public record StaffMusic(Phrase title, int signature, boolean grand, List<StaffColumn> columns) {
    private static final int MIDDLE_C = 28;
    /** G3, which stands below two ledger lines. */
    private static final int LOWEST_ON_ONE_STAFF = 25;

    private static final int MOST_SIGNS = 7;

    /** @throws IllegalArgumentException if there are more than seven signs, or no column */
    public StaffMusic {
        columns = List.copyOf(columns);
        if (Math.abs(signature) > MOST_SIGNS || columns.isEmpty()) {
            throw new IllegalArgumentException(signature + " signs, " + columns.size() + " columns");
        }
    }

    /** On one staff in the treble clef, or where a note lies more than two ledger lines below it on a grand staff. */
    public static StaffMusic of(Phrase title, int signature, List<StaffColumn> columns) {
        int signs = Math.abs(signature) > MOST_SIGNS ? 0 : signature;
        boolean low = columns.stream()
                .flatMap(column -> column.upper().stream())
                .anyMatch(pitch -> pitch.staffPosition() < LOWEST_ON_ONE_STAFF);
        return low
                ? new StaffMusic(
                        title,
                        signs,
                        true,
                        columns.stream().map(column -> column.split(MIDDLE_C)).toList())
                : new StaffMusic(title, signs, false, columns);
    }
}
