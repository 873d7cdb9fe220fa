package monochord.lesson;

import java.util.List;
import java.util.Optional;

/**
 * What came of reading a lesson file.
 *
 * @param lesson with all that could be read of it; nothing if the file is no text, is too large, or has no title or grade
 * @param faults all of them, as they stand in the file
 */
public record Reading(Optional<Lesson> lesson, List<Fault> faults) {
    public Reading {
        faults = List.copyOf(faults);
    }

    public boolean isSound() {
        return faults.isEmpty();
    }
}
