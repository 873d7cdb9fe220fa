package monochord.classroom.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import monochord.classroom.Assignment;
import monochord.classroom.AssignmentHead;
import monochord.classroom.AssignmentReader;
import monochord.classroom.AssignmentTerms;
import monochord.classroom.AssignmentWriter;
import monochord.classroom.Marking;
import monochord.classroom.PupilCode;
import monochord.classroom.TeachersFiles;
import monochord.practice.skill.Skills;
import monochord.record.KeptAttempt;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/** What of a marked file goes on record. */
class AnswersToKeepTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 3);

    private static final Assignment HOMEWORK = Assignment.same(
            new AssignmentHead("lowered-degrees-5", "Lowered degrees", "7b", Optional.empty(), 5),
            AssignmentTerms.OPEN,
            "",
            List.of(
                    Skills.find("lowered-degree").orElseThrow().question(Key.parse("Eb major"), "b7"),
                    Skills.find("lowered-degree").orElseThrow().question(Key.parse("Eb major"), "b3"),
                    Skills.find("lowered-degree").orElseThrow().question(Key.parse("Eb major"), "b6")));

    private static List<KeptAttempt> kept(String head, TeachersFiles teacher) {
        String text = AssignmentWriter.text(HOMEWORK)
                .replace("code:", head)
                .replaceFirst("Answer:", "Answer: D\nAnswer: Db")
                .replaceFirst("(?s)(## 2.*?)Answer:", "$1Answer: a riddle");
        return AnswersToKeep.of(Marking.mark(AssignmentReader.read("anna.md", text), "anna.md", teacher), TODAY);
    }

    private static List<String> told(List<KeptAttempt> kept) {
        return kept.stream()
                .map(one -> Instant.ofEpochMilli(one.attempt().time()) + " " + one.learner() + " "
                        + one.attempt().answer() + " " + one.attempt().tries())
                .toList();
    }

    @Test
    void triesComeOneAfterTheOtherOnTheDayThatTheFileTells() {
        assertEquals(
                List.of("2026-11-26T00:00:00Z 7b-04 D 0", "2026-11-26T00:00:00.001Z 7b-04 Db 1"),
                told(kept("code: 7b-04\ngiven: 2026-11-26", TeachersFiles.NONE)));
    }

    @Test
    void aDayThatHasNotComeIsToday() {
        assertEquals(
                told(kept("code: 7b-04", TeachersFiles.NONE)),
                told(kept("code: 7b-04\ngiven: 2031-01-01", TeachersFiles.NONE)));
        assertEquals(
                "2026-12-03T00:00:00Z 7b-04 D 0",
                told(kept("code: 7b-04", TeachersFiles.NONE)).get(0));
    }

    @Test
    void whoIsNotOnTheListIsNotKeptNorIsNobody() {
        TeachersFiles others = TeachersFiles.of(List.of(), Set.of(PupilCode.parse("7b-05")));
        assertEquals(List.of(), kept("code: 7b-04", others));
        assertEquals(List.of(), kept("code:", TeachersFiles.NONE));
    }
}
