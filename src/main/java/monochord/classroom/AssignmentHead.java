package monochord.classroom;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What stands at the top of an assignment.
 *
 * @param id small letters, digits and hyphens, which tells it from the teacher's others: {@code triads-4711}
 * @param forWhom a class or group, perhaps nothing
 * @param due the last day on which it may be handed in
 * @param seed from which its questions are drawn
 */
public record AssignmentHead(String id, String title, String forWhom, Optional<LocalDate> due, long seed) {
    static final Pattern ID = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*+");
    static final int LONGEST_ID = 60;

    /** @throws IllegalArgumentException if the id is none, or the title is empty */
    public AssignmentHead {
        if (id.length() > LONGEST_ID || !ID.matcher(id).matches() || title.isBlank()) {
            throw new IllegalArgumentException("no id and title: \"" + id + "\", \"" + title + "\"");
        }
    }
}
