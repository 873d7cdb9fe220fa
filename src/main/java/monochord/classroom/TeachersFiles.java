package monochord.classroom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a teacher has to hold hand-ins against.
 *
 * @param assignments by their ids; none where only what a hand-in itself says is gone by
 * @param codes of all pupils; none where there is no list of them
 */
public record TeachersFiles(Map<String, Assignment> assignments, Set<PupilCode> codes) {
    public static final TeachersFiles NONE = new TeachersFiles(Map.of(), Set.of());

    public TeachersFiles {
        assignments = Map.copyOf(assignments);
        codes = Set.copyOf(codes);
    }

    /** Of two assignments with one id the first counts. */
    public static TeachersFiles of(List<Assignment> assignments, Set<PupilCode> codes) {
        Map<String, Assignment> byId = new LinkedHashMap<>();
        assignments.forEach(assignment -> byId.putIfAbsent(assignment.id(), assignment));
        return new TeachersFiles(byId, codes);
    }

    Optional<Assignment> assignment(String id) {
        return Optional.ofNullable(assignments.get(id));
    }

    boolean isUnknown(PupilCode code) {
        return !codes.isEmpty() && !codes.contains(code);
    }
}
