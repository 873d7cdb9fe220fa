package monochord.view.staff;

import java.util.List;
import java.util.Optional;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * An event with what its neighbours decide.
 *
 * @param at quarters from the start of its bar
 * @param shared whether two voices share its staff in this bar
 * @param stemUp which way its stem goes, or would
 * @param beam the place of its beam among those of the bar, if one joins it
 * @param tiedInto notes that go on from the event before
 */
record SetEvent(
        StaffEvent event, Beats at, boolean shared, boolean stemUp, Optional<Integer> beam, List<Pitch> tiedInto) {
    /** How far from the middle line its notes lie at most: upwards positive, equal is none. */
    static int lean(StaffEvent event, Clef clef) {
        if (event.pitches().isEmpty()) {
            return 0;
        }
        int lowest = event.pitches().get(0).staffPosition();
        int highest = event.pitches().get(event.pitches().size() - 1).staffPosition();
        return highest - clef.middle() - (clef.middle() - lowest);
    }

    boolean isBeamed() {
        return beam.isPresent();
    }
}
