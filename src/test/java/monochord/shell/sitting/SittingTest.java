package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import monochord.course.Course;
import monochord.course.JudgedAnswer;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.skill.Skills;
import monochord.shell.line.LineMode;
import monochord.shell.playback.Ear;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Look;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a sitting remembers from line to line. */
class SittingTest {
    private final Course course = new Course(Path.of("lessons"));
    private final Sitting sitting = new Sitting(Ear.silent(), new Random(3)::nextLong, Path.of(""), course);
    private final Skill interval = Skills.find("interval").orElseThrow();

    private Question ask(String subject) {
        Question question = interval.question(sitting.key(), subject);
        sitting.teaching().ask(interval, question);
        return question;
    }

    private void begin(String lesson) {
        LessonStart.alone(course.library().find(lesson).orElseThrow(), Optional.of(Key.parse("D major")), sitting);
    }

    private Question firstQuestionOf(String lesson) {
        begin(lesson);
        while (!sitting.question().isOpen()) {
            sitting.teaching().goOn();
        }
        return sitting.question().question();
    }

    private static String text(Answer answer) {
        return answer.text(Look.ofPipe()).plain();
    }

    @Test
    void enterLeavesAnOpenQuestionWhetherItWasTriedOrNot() {
        ask("perfect fifth");
        assertEquals(
                "We leave it. ask asks another of its kind.",
                text(sitting.teaching().goOn()).strip());
        assertEquals(LineMode.REST, sitting.mode());
        ask("perfect fifth");
        sitting.teaching().answer("F");
        sitting.teaching().goOn();
        assertEquals(LineMode.REST, sitting.mode());
    }

    @Test
    void enterAfterARightAnswerAsksTheSameSkillAgain() {
        ask("perfect fifth");
        sitting.teaching().answer("G");
        assertEquals(LineMode.ANSWERED, sitting.mode());
        assertFalse(sitting.question().isOpen());
        sitting.teaching().goOn();
        assertEquals("interval", sitting.question().question().skillId());
    }

    @Test
    void aWrongAnswerLeavesTheQuestionOpen() {
        Question open = ask("perfect fifth");
        Answer wrong = sitting.teaching().answer("A");
        assertEquals(Answer.NO, wrong.status());
        assertTrue(text(wrong).endsWith("Try again, or: hint, why, tell."), text(wrong));
        assertEquals(open, sitting.question().question());
        assertEquals(Answer.DONE, sitting.teaching().answer("g").status());
        assertFalse(sitting.question().wasRightAtOnce());
    }

    @Test
    void anAnswerThatCannotBeReadIsNeverTheLastVerdict() {
        ask("perfect fifth");
        sitting.teaching().answer("??");
        assertNull(sitting.question().lastVerdict());
        sitting.teaching().answer("A");
        String verdict = sitting.question().lastVerdict().message().toString();
        sitting.teaching().answer("??");
        assertEquals(verdict, sitting.question().lastVerdict().message().toString());
    }

    @Test
    @DisplayName("the third hint says that it is the last, and comes again; hints count as help")
    void hintsEndWithTheLastOneAndCountAsHelp() {
        Question open = ask("perfect fifth");
        String last = open.hints().get(2) + " That was the last hint; tell says the answer.";
        assertEquals(open.hints().get(0), sitting.question().hint());
        assertEquals(open.hints().get(1), sitting.question().hint());
        assertEquals(last, sitting.question().hint().toString());
        assertEquals(last, sitting.question().hint().toString());
        sitting.teaching().answer("G");
        assertFalse(sitting.question().wasRightAtOnce());
    }

    @Test
    @DisplayName(
            "hints begin where the learner is, the same wrong answer again gets the next help, and why stays with the rule")
    void helpBeginsWhereTheLearnerIs() {
        Skill skill = Skills.find("borrowed-chord").orElseThrow();
        sitting.teaching().ask(skill, skill.question(Key.parse("D"), "bVI"));
        assertEquals(
                "Nearly. B♭ and D are right. F♯ still belongs to D major: measure it from the new root.",
                told("Bb D F#"));
        assertEquals("Nearly. The same again. B♭ and D are right. Look at the fifth.", told("Bb D F#"));
        assertEquals("Nearly. The same again. Count letters up to the fifth, with B♭ as the first.", told(" Bb D F# "));
        assertEquals(
                "From B♭ the fifth lies seven half steps above the root. That was the last hint; tell says the answer.",
                sitting.question().hint().toString());
        assertEquals(
                "When the root comes down, the other tones follow the chord's own quality, not the key. B♭ and D are "
                        + "right. F♯ still belongs to D major: measure it from the new root.",
                sitting.question()
                        .lastQuestion()
                        .explain(sitting.question().lastVerdict())
                        .toString());
        assertEquals("Nearly. B♭ and F are right. The third is missing.", told("Bb F"));
        assertEquals(
                "B♭ and F are right. Look at the third.",
                sitting.question().hint().toString());
    }

    private Verdict verdictOn(String answer) {
        JudgedAnswer judged = sitting.teaching().judge(answer);
        sitting.teaching().take(judged);
        return judged.verdict();
    }

    private String told(String answer) {
        return verdictOn(answer).message().toString();
    }

    @Test
    void aLessonsQuestionWaitsWhileAnotherIsAskedByName() {
        Question lessons = firstQuestionOf("1.2");
        ask("perfect fifth");
        Answer right = sitting.teaching().answer("A");
        assertTrue(text(right).contains(lessons.prompt().toString().split(" ")[0]), text(right));
        assertEquals(lessons, sitting.question().question());
    }

    @Test
    void aQuestionAskedByNameDoesNotCountInTheLesson() {
        Question lessons = firstQuestionOf("1.2");
        ask("perfect fifth");
        sitting.teaching().answer("G");
        sitting.teaching().goOn();
        assertEquals(lessons, sitting.question().question(), "left, and back to the lesson");
        String end = "";
        int asked = 0;
        while (sitting.teaching().isInLesson()) {
            asked += sitting.question().isOpen() ? 1 : 0;
            end = text(
                    sitting.question().isOpen()
                            ? sitting.teaching()
                                    .answer(sitting.question().question().expected())
                            : sitting.teaching().goOn());
        }
        assertTrue(asked > 3);
        assertTrue(end.contains(asked + " of " + asked + " answers right at the first try."), end);
    }

    @Test
    void enterAfterALessonBeginsTheNextWhateverWasAskedBefore() {
        ask("perfect fifth");
        firstQuestionOf("1.1");
        while (sitting.teaching().isInLesson()) {
            if (sitting.question().isOpen()) {
                sitting.teaching().answer(sitting.question().question().expected());
            } else {
                sitting.teaching().goOn();
            }
        }
        assertTrue(text(sitting.teaching().goOn()).startsWith("1.2  Seven letters, each once  in "), "the next lesson");
    }

    @Test
    void aNewLessonSweepsTheDesk() {
        ask("perfect fifth");
        begin("1.1");
        assertFalse(sitting.question().isOpen());
    }

    @Test
    void enterBeginsTheFirstLesson() {
        assertTrue(text(sitting.teaching().goOn()).startsWith("1.1  Steps and half steps  in C major"));
    }
}
