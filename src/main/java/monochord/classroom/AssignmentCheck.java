package monochord.classroom;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.lesson.Fault;
import monochord.lesson.read.Faults;
import monochord.practice.Question;
import monochord.text.Phrase;

/** Finds what is wrong with an assignment, or with what is handed in, before anybody marks it. */
public final class AssignmentCheck {
    private AssignmentCheck() {}

    /** @param name as it stands in the faults */
    public static List<Fault> faults(Path file, String name) {
        AssignmentReading reading = AssignmentReader.read(file, name);
        Faults found = new Faults(name);
        reading.assignment().ifPresent(assignment -> check(assignment, reading, found));
        return Stream.concat(reading.faults().stream(), found.inOrder().stream())
                .sorted(Fault.IN_ORDER)
                .toList();
    }

    private static void check(Assignment assignment, AssignmentReading reading, Faults found) {
        String digest = assignment.digest();
        if (!reading.digest().equals(digest)) {
            found.at(
                    1,
                    1,
                    Phrase.of("the digest does not fit what is asked"),
                    Phrase.of("write {0}, or the file as it was given out", Phrase.typed("digest: " + digest)));
        }
        for (AssignedQuestion asked : assignment.questions()) {
            Optional<Question> question = asked.question().filter(one -> !asked.isAskedAs(one));
            question.ifPresent(other -> found.at(
                    reading.places().getOrDefault(asked.item(), 1),
                    1,
                    Phrase.of("question {0} is asked in other words", asked.item()),
                    Phrase.of("write \"{0}\"", other.prompt())));
        }
    }
}
