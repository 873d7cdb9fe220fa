package monochord.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.classroom.HandIn.GivenAnswer;
import monochord.classroom.HandIn.TypedAnswer;
import monochord.course.JudgedAnswer;
import monochord.practice.Mistake;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.skill.Skills;
import monochord.text.naming.ToType;
import monochord.theory.Key;
import monochord.theory.note.NoteNaming;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * An answer that went through a file is judged as it would have been at the prompt: for every skill, in its keys, right and
 * by each wrong procedure, in the note names of each country.
 */
class MarkedAsAtThePromptTest {
    static Stream<Skill> skills() {
        return Skills.all().stream();
    }

    @ParameterizedTest
    @MethodSource("skills")
    void judgedTheSame(Skill skill) {
        for (NoteNaming naming : NoteNaming.values()) {
            List<Question> questions = new ArrayList<>();
            for (Key key : Thorough.spread(skill.keys(), 4, skill.id().length())) {
                for (int seed = 0; seed < Thorough.times(2, 12); seed++) {
                    questions.add(skill.question(key, 31L * seed));
                }
            }
            for (int round = 0; round < 4; round++) {
                judgedTheSame(questions, round, naming);
            }
        }
    }

    private static void judgedTheSame(List<Question> questions, int round, NoteNaming naming) {
        List<String> answers =
                questions.stream().map(one -> answer(one, round, naming)).toList();
        MarkedHandIn marked = Homework.marked(AssignmentWriter.text(handIn(questions, answers, naming)));
        assertEquals(List.of(), marked.faults());
        assertEquals(questions.size(), marked.of());
        for (int i = 0; i < questions.size(); i++) {
            Verdict there =
                    JudgedAnswer.of(answers.get(i), questions.get(i), naming).verdict();
            MarkedAnswer here = marked.answers().get(i);
            assertEquals(answers.get(i), here.last().orElseThrow().answer());
            assertEquals(
                    said(there), said(here.last().orElseThrow().verdict()), questions.get(i) + ": " + answers.get(i));
            assertEquals(questions.get(i), here.question());
        }
    }

    /** The right answer, then wrong ones, and something that is none. */
    private static String answer(Question question, int round, NoteNaming naming) {
        List<Mistake> mistakes = question.mistakes();
        String english = round == 0 || mistakes.isEmpty()
                ? question.expected()
                : mistakes.get(round % mistakes.size()).answer();
        return (round == 3 ? "I think it is " : "") + ToType.in(english, naming).strip();
    }

    private static String said(Verdict verdict) {
        return verdict.grade() + " " + verdict.misconception() + " " + verdict.message();
    }

    private static HandIn handIn(List<Question> questions, List<String> answers, NoteNaming naming) {
        Assignment assignment = Assignment.same(Homework.borrowed().head(), AssignmentTerms.OPEN, "", questions);
        List<GivenAnswer> given = new ArrayList<>();
        for (int i = 0; i < questions.size(); i++) {
            given.add(new GivenAnswer(i + 1, List.of(new TypedAnswer(answers.get(i), 0, 0)), 0, 0));
        }
        return new HandIn(
                assignment,
                assignment.digest(),
                Optional.of(new PupilCode("7b-04")),
                naming,
                Optional.empty(),
                given,
                Map.of());
    }
}
