package monochord.classroom;

import java.util.List;
import java.util.Optional;
import monochord.lesson.Fault;

/**
 * What came of reading the file of an assignment.
 *
 * @param assignment nothing if the file is none, or its head cannot be read
 * @param handIn the same with a pupil's code and answers, if any stand in it
 * @param faults all of them, as they stand in the file
 */
public record AssignmentReading(Optional<Assignment> assignment, Optional<HandIn> handIn, List<Fault> faults) {
    public AssignmentReading {
        faults = List.copyOf(faults);
    }
}
