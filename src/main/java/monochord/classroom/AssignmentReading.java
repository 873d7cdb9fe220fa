package monochord.classroom;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.lesson.Fault;

/**
 * What came of reading the file of an assignment.
 *
 * @param assignment nothing if the file is none, or its head cannot be read
 * @param handIn the same with a pupil's code and answers, if any stand in it
 * @param digest that the file tells; empty if it tells none
 * @param places on which line of the file each question stands, by its number
 * @param faults all of them, as they stand in the file
 */
public record AssignmentReading(
        Optional<Assignment> assignment,
        Optional<HandIn> handIn,
        String digest,
        Map<Integer, Integer> places,
        List<Fault> faults) {
    public AssignmentReading {
        places = Map.copyOf(places);
        faults = List.copyOf(faults);
    }

    /** Of a file that is none. */
    static AssignmentReading none(List<Fault> faults) {
        return new AssignmentReading(Optional.empty(), Optional.empty(), "", Map.of(), faults);
    }
}
