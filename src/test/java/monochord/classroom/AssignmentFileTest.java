package monochord.classroom;

import static monochord.classroom.Homework.borrowed;
import static monochord.classroom.Homework.each;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.classroom.HandIn.TypedAnswer;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Assignments and hand-ins as files: what is written is read again, the same. */
class AssignmentFileTest {
    private static Assignment read(String text) {
        AssignmentReading reading = AssignmentReader.read("homework.md", text);
        assertEquals(List.of(), reading.faults());
        return reading.assignment().orElseThrow();
    }

    @Test
    void anAssignmentIsWrittenInTheGrammarOfLessons() {
        Assignment one = Assignment.same(
                borrowed().head(),
                Homework.STRICT,
                "See you on Thursday.",
                List.of(Homework.question("borrowed-chord", "iv", "E major")));
        assertEquals("""
                ---
                assignment: borrowed-chords-7
                title: Borrowed chords
                for: 7b
                due: 2026-12-10
                seed: 7
                tries: 2
                hints: no
                verdicts: later
                digest: %s
                code:
                ---

                See you on Thursday.

                ## 1

                ```ask
                item: 1
                skill: borrowed-chord
                subject: iv
                key: E major
                seed: 0
                ```

                Which chord is iv in E major, the minor chord on the fourth?

                Answer:
                """.formatted(one.digest()), AssignmentWriter.text(one));
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        assertEquals(borrowed(), read(AssignmentWriter.text(borrowed())));
        assertEquals(AssignmentWriter.text(each()), AssignmentWriter.text(read(AssignmentWriter.text(each()))));
        assertTrue(AssignmentReader.isAssignment(AssignmentWriter.text(each())));
        assertFalse(AssignmentReader.isAssignment("---\ntitle: A lesson\ngrade: 1\n---\n"));
    }

    @Test
    void everySkillGoesIntoAFileAndComesBackTheSame() {
        List<Question> questions = new ArrayList<>();
        for (Skill skill : Skills.all()) {
            for (long seed = -2; seed < 3; seed++) {
                questions.add(skill.question(skill.keys().get(skill.keys().size() - 1), seed * 99_991));
            }
        }
        Assignment written = Assignment.same(borrowed().head(), AssignmentTerms.OPEN, "", questions);
        Assignment read = read(AssignmentWriter.text(written));
        assertEquals(written, read);
        for (int i = 0; i < questions.size(); i++) {
            Question again = read.questions().get(i).question().orElseThrow();
            assertEquals(questions.get(i), again);
            assertEquals(questions.get(i).expected(), again.expected());
            assertEquals(
                    questions.get(i).prompt().toString(),
                    read.questions().get(i).words());
        }
    }

    @Test
    void noSubjectGivesItsAnswerAway() {
        for (Skill skill : Skills.all()) {
            for (long seed = 0; seed < 20; seed++) {
                Question question = skill.question(skill.keys().get(0), seed);
                String subject = AssignedQuestion.of(1, question).subject();
                assertTrue(
                        subject.isEmpty()
                                || !question.isByEar()
                                        && !question.judge(subject).grade().isRight(),
                        question + " says " + subject);
            }
        }
    }

    @Test
    void aHandInIsReadAsItWasWritten() {
        Assignment assignment = borrowed();
        HandIn handIn = new HandIn(
                assignment,
                assignment.digest(),
                Optional.of(new PupilCode("7b-04")),
                NoteNaming.GERMAN,
                Optional.of(LocalDate.of(2026, 12, 9)),
                List.of(
                        new GivenAnswer(
                                1, List.of(new TypedAnswer("Amaj", 30, 9), new TypedAnswer("Am", 31, 9)), 1, 14),
                        new GivenAnswer(3, List.of(new TypedAnswer("3. what?", 61, 9)), 0, 0)),
                Map.of(1, 20, 2, 37, 3, 51));
        AssignmentReading reading = AssignmentReader.read("anna.md", AssignmentWriter.text(handIn));
        assertEquals(List.of(), reading.faults());
        assertEquals(handIn, reading.handIn().orElseThrow());
    }

    @Test
    void eachPupilGetsTheirOwnAndAlwaysTheSame() {
        Assignment anna = each().forPupil(new PupilCode("7b-04"));
        assertEquals(anna, each().forPupil(new PupilCode("7b-04")));
        assertEquals(4, anna.questions().size());
        assertNotEquals(
                anna.questions(), each().forPupil(new PupilCode("7b-05")).questions());
        assertEquals(each().digest(), anna.digest());
        assertEquals(borrowed(), borrowed().forPupil(new PupilCode("7b-04")));
    }

    @Test
    void theDigestHoldsWhatIsAskedAndHow() {
        String file = AssignmentWriter.text(borrowed());
        List<String> otherwise = List.of(
                file.replace("subject: bVII", "subject: bVI"),
                file.replace("due: 2026-12-10", "due: 2026-12-17"),
                file.replace("tries: 2", "tries: any"),
                file.replace("Which chord is iv", "Which chord is I"));
        otherwise.forEach(
                text -> assertNotEquals(borrowed().digest(), read(text).digest(), text));
        List<String> same = List.of(
                file.replace("\n", "\r\n"),
                file.replace("title: Borrowed chords", "title: Hello"),
                file.replace("See you on Thursday.", "Seen. I like Thursdays."),
                file.replace("the minor chord", "the  minor\nchord"));
        same.forEach(text -> assertEquals(borrowed().digest(), read(text).digest(), text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            7B-04      | 7b-04
            '  anna '  | anna
            x          | x
            """)
    void readsCodes(String text, String code) {
        assertEquals(code, PupilCode.parse(text).text());
        assertEquals(new PupilCode(code), PupilCode.parse(new PupilCode(code).toString()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ../../etc/passwd  | "../../etc/passwd" is not a pupil's code: expected letters, digits and hyphens, at most 16. Example: 7b-04
            Anna Smith        | "Anna Smith" is not a pupil's code: expected letters, digits and hyphens, at most 16. Example: 7b-04
            -4                | "-4" is not a pupil's code: expected letters, digits and hyphens, at most 16. Example: 7b-04
            abcdefghijklmnopq | "abcdefghijklmnopq" is not a pupil's code: expected letters, digits and hyphens, at most 16. Example: 7b-04
            """)
    void refusesWhatIsNoCode(String text, String message) {
        assertEquals(
                message,
                assertThrows(Unreadable.class, () -> PupilCode.parse(text)).getMessage());
    }
}
