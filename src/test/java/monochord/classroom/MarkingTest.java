package monochord.classroom;

import static monochord.classroom.Homework.borrowed;
import static monochord.classroom.Homework.each;
import static monochord.classroom.Homework.faults;
import static monochord.classroom.Homework.handedIn;
import static monochord.classroom.Homework.marked;
import static monochord.classroom.Homework.verdicts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.classroom.HandIn.TypedAnswer;
import monochord.practice.Question;
import monochord.theory.note.NoteNaming;
import org.junit.jupiter.api.Test;

/** Marking what was handed in: by the engine alone, and nothing but the file and the teacher's assignments. */
class MarkingTest {
    private static final PupilCode CODE = new PupilCode("7b-04");
    private static final TeachersFiles TEACHER = TeachersFiles.of(List.of(borrowed(), each()), Set.of(CODE));

    @Test
    void marksEachAnswerByTheEngine() {
        MarkedHandIn marked = marked(handedIn(borrowed(), "Am", "C#m", "D"));
        assertEquals("right wrong right", verdicts(marked));
        assertEquals(2, marked.right());
        assertEquals(3, marked.of());
        assertEquals(List.of(), marked.faults());
        assertEquals(Optional.of(CODE), marked.code());
        assertEquals(MarkedHandIn.HandInSigns.NONE, marked.signs());
    }

    @Test
    void whatWasNotAnsweredIsNotWrong() {
        assertEquals("right - right", verdicts(marked(handedIn(borrowed(), "Am", "", "D"))));
        assertEquals("right unreadable -", verdicts(marked(handedIn(borrowed(), "Am", "no idea"))));
    }

    @Test
    void theLastAnswerStandsAndTheFirstIsTheEvidence() {
        String file = handedIn(borrowed(), "A\nAnswer: Am\nHelp: 1\nTook: 14");
        MarkedAnswer answer = marked(file).answers().get(0);
        assertTrue(answer.isRight());
        assertEquals(
                List.of("A", "Am"),
                answer.tries().stream().map(MarkedAnswer.MarkedTry::answer).toList());
        var attempts = answer.attempts(LocalDate.of(2026, 12, 9));
        assertEquals(2, attempts.size());
        assertEquals("7b-04", attempts.get(0).learner());
        assertEquals("borrowed-chords-7", attempts.get(0).assignment());
        assertEquals(14_000, attempts.get(0).attempt().millis());
        assertEquals(1, attempts.get(0).attempt().hints());
        assertEquals(1, attempts.get(1).attempt().tries());
    }

    @Test
    void moreAnswersThanAllowedAreTold() {
        MarkedHandIn marked = marked(handedIn(borrowed(), "A\nAnswer: G\nAnswer: Am"));
        assertEquals(
                List.of("anna.md:30:9: question 1 has 3 answers where 2 are allowed; the last one counts"),
                faults(marked));
    }

    @Test
    void anAlteredQuestionIsToldWithOrWithoutTheAssignment() {
        String file = handedIn(borrowed(), "Am", "G", "D").replace("subject: bVI\n", "subject: bIII\n");
        MarkedHandIn alone = marked(file);
        assertTrue(alone.signs().altered());
        MarkedHandIn beside = marked(file, TEACHER);
        assertTrue(beside.signs().altered());
        assertEquals("right wrong right", verdicts(beside));
        assertTrue(beside.answers().get(1).altered());
        assertEquals(List.of(), beside.answers().get(1).attempts(LocalDate.EPOCH));
        assertEquals(
                List.of("anna.md:32:1: question 2 is not as it was assigned; look at it beside the assignment"),
                faults(beside));
    }

    @Test
    void anAlteredQuestionWithADigestThatFitsIsFoundBesideTheAssignment() {
        Assignment easier = Assignment.same(
                borrowed().head(),
                Homework.STRICT,
                "",
                List.of(
                        Homework.question("borrowed-chord", "iv", "E major"),
                        Homework.question("borrowed-chord", "iv", "E major"),
                        Homework.question("borrowed-chord", "bVII", "E major")));
        String file = handedIn(easier, "Am", "Am", "D");
        assertFalse(marked(file).signs().altered());
        assertTrue(marked(file, TEACHER).signs().altered());
        assertEquals("right wrong right", verdicts(marked(file, TEACHER)));
    }

    @Test
    void lateAndUnknownAreToldAsTheFileTellsThem() {
        String file = handedIn(borrowed(), "Am", "C", "D");
        assertFalse(marked(file, TEACHER).signs().unknown());
        assertTrue(marked(file.replace("7b-04", "7b-44"), TEACHER).signs().unknown());
        assertFalse(marked(file.replace("code:", "given: 2026-12-10\ncode:"), TEACHER)
                .signs()
                .late());
        assertTrue(marked(file.replace("code:", "given: 2026-12-11\ncode:"), TEACHER)
                .signs()
                .late());
    }

    @Test
    void ownQuestionsAreDrawnAgain() {
        Assignment anna = each().forPupil(CODE);
        String[] answers = anna.questions().stream()
                .map(asked -> asked.question().map(Question::expected).orElseThrow())
                .toArray(String[]::new);
        String file = handedIn(anna, answers);
        assertEquals("right right right right", verdicts(marked(file)));
        assertEquals("right right right right", verdicts(marked(file, TEACHER)));
        MarkedHandIn another = marked(file.replace("7b-04", "7b-05"));
        assertTrue(another.signs().altered());
    }

    @Test
    void aFileWithoutACodeIsAFaultAndNeverAZero() {
        MarkedHandIn marked = marked(AssignmentWriter.text(borrowed()).replace("Answer:", "Answer: Am"));
        assertEquals(0, marked.of());
        assertEquals(
                List.of("anna.md:1:1: no pupil's code stands in the head; write for example code: 7b-04"),
                faults(marked));
        MarkedHandIn path = marked(handedIn(borrowed(), "Am").replace("7b-04", "../../7b-04"));
        assertEquals(0, path.of());
        assertEquals(
                List.of(
                        "anna.md:11:7: \"../../7b-04\" is not a pupil's code: expected letters, digits and hyphens, at most 16; write for example 7b-04"),
                faults(path));
    }

    @Test
    void aVerdictInTheFileCountsForNothing() {
        assertEquals("wrong - -", verdicts(marked(handedIn(borrowed(), "C\nVerdict: right"))));
    }

    @Test
    void aHandInOfTheProgramIsMarkedAsTyped() {
        HandIn german = new HandIn(
                borrowed(),
                borrowed().digest(),
                Optional.of(CODE),
                NoteNaming.GERMAN,
                Optional.empty(),
                List.of(new GivenAnswer(1, List.of(new TypedAnswer("a-Moll", 0, 0)), 0, 0)),
                Map.of());
        assertEquals("right - -", verdicts(marked(AssignmentWriter.text(german))));
    }
}
