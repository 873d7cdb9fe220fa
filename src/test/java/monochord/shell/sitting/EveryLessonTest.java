package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.course.Course;
import monochord.course.OpenQuestion;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Grade;
import monochord.practice.Mistake;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.shell.playback.Ear;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Verb;
import monochord.shell.verb.Verbs;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Look;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Our lessons, walked to the end by learners of several kinds: thoroughly in each of the fifteen keys. */
class EveryLessonTest {
    /** Its library is read once; each learner takes the lessons afresh. */
    private static final Course OURS = new Course(Path.of("lessons"));

    /** Of 24 lines, the empty one above the prompt and the prompt itself taken off. */
    private static final int SCREEN = 22;

    private static final int MOST_TURNS = 400;
    private static final Pattern END =
            Pattern.compile("(?s).*End of (.*)\\. (\\d+) of (\\d+) answers right at the first try\\..*");

    /** What a learner does at an open question. */
    private interface Learner {
        /** @return what the screen shows last */
        Answer meets(Question question, Walk walk);

        /** Whether all answers of this learner count as right at the first try. */
        default boolean isGood() {
            return false;
        }
    }

    /** One lesson in one key, and what is known of it from outside. */
    private static final class Walk {
        private final Sitting sitting;
        private final Course course;
        private int asked;

        Walk(Course course, long seed) {
            this.course = course;
            sitting = new Sitting(Ear.silent(), new Random(seed)::nextLong, Path.of(""), course);
            sitting.setDisplay(new Look(80, Signs.MUSIC, false, false), 24);
        }

        /** @return the last page */
        String through(LibraryEntry lesson, Key key, Learner learner) {
            sitting.settle(key);
            Answer page = LessonStart.alone(lesson, Optional.of(key), sitting);
            for (int turns = 0;
                    sitting.teaching().isInLesson() || sitting.question().isOpen();
                    turns++) {
                assertTrue(turns < MOST_TURNS, "the lesson goes on for ever");
                page = sitting.question().isOpen()
                        ? asked(learner)
                        : sitting.teaching().goOn();
                shown(page);
            }
            return shown(page);
        }

        private Answer asked(Learner learner) {
            asked++;
            Question question = sitting.question().question();
            assertFalse(question.prompt().toString().isBlank());
            return learner.meets(question, this);
        }
    }

    /** The page as an 80-column terminal shows it, and proof that an ASCII one can. */
    private static String shown(Answer answer) {
        String ascii = answer.text(new Look(40, Signs.ASCII, false, false)).plain();
        assertTrue(ascii.chars().allMatch(c -> c < 0x7F), ascii);
        String text = answer.text(new Look(80, Signs.MUSIC, false, false)).plain();
        assertFalse(text.contains("${"), text);
        assertTrue(text.lines().count() <= SCREEN, text);
        assertTrue(text.lines().allMatch(line -> line.codePointCount(0, line.length()) <= 80), text);
        return text;
    }

    static Stream<LibraryEntry> lessons() {
        return OURS.library().entries().stream();
    }

    @Test
    void thereAreSeventyLessonsAndFifteenKeys() {
        assertEquals(70, lessons().count());
        assertEquals(15, Key.majorKeys().size());
    }

    /** Counted through all books, from 0. */
    private static int number(LibraryEntry lesson) {
        return OURS.library().entries().indexOf(lesson);
    }

    /** The easiest key, one in the middle, and the two farthest out: enough for what does not hang on the spelling. */
    private static void inFourKeys(LibraryEntry lesson, Learner learner) {
        List<Key> all = Key.majorKeys();
        List<Key> four = List.of(all.get(0), all.get(5), all.get(13), all.get(14));
        in(Thorough.spread(four, 1, number(lesson)), lesson, learner);
    }

    private static void in(List<Key> keys, LibraryEntry lesson, Learner learner) {
        Course course = OURS.afresh();
        for (Key key : keys) {
            Walk walk = new Walk(course, key.tonic().fifths());
            String last = walk.through(lesson, key, learner);
            Matcher end = END.matcher(last.replaceAll("\\s+", " "));
            assertTrue(end.matches(), () -> lesson.number() + " in " + key + " ends with: " + last);
            assertEquals(walk.asked, Integer.parseInt(end.group(3)), () -> lesson.number() + " in " + key);
            assertTrue(walk.asked > 0, () -> lesson.number() + " asks nothing in " + key);
            assertEquals(learner.isGood() ? walk.asked : 0, Integer.parseInt(end.group(2)));
            assertEquals(lesson.title(), end.group(1));
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void whoAnswersRightGetsThrough(LibraryEntry lesson) {
        in(Thorough.spread(Key.majorKeys(), 1, number(lesson)), lesson, new Learner() {
            @Override
            public Answer meets(Question question, Walk walk) {
                Answer answer = walk.sitting.teaching().answer(question.expected());
                assertEquals(Answer.DONE, answer.status(), () -> question + ": " + shown(answer));
                return answer;
            }

            @Override
            public boolean isGood() {
                return true;
            }
        });
    }

    @Thorough.FirstOf(2)
    @ParameterizedTest
    @MethodSource("lessons")
    void whoAnswersWrongAndSkipsGetsThrough(LibraryEntry lesson) {
        inFourKeys(lesson, (question, walk) -> {
            for (Mistake mistake : question.mistakes()) {
                if (!walk.sitting.question().isOpen()) {
                    break; // By ear the second is told and closes the question.
                }
                Answer answer = walk.sitting.teaching().answer(mistake.answer());
                assertEquals(Answer.NO, answer.status(), () -> question + ", " + mistake + ": " + shown(answer));
                shown(answer);
            }
            return walk.sitting.question().isTried() || !walk.sitting.question().isOpen()
                    ? walk.sitting.teaching().goOn()
                    : walk.sitting.teaching().tell();
        });
    }

    @Thorough.FirstOf(3)
    @ParameterizedTest
    @MethodSource("lessons")
    void nonsenseIsNeverCountedAgainstTheLearner(LibraryEntry lesson) {
        inFourKeys(lesson, new Learner() {
            @Override
            public Answer meets(Question question, Walk walk) {
                for (String nonsense : List.of("??", "\0\33[2J", "x".repeat(500), "{\"a\":1}", "\uD834")) {
                    Answer answer = walk.sitting.teaching().answer(nonsense);
                    assertEquals(Answer.UNREADABLE, answer.status(), () -> question + ": " + shown(answer));
                    shown(answer);
                }
                assertFalse(walk.sitting.question().isTried());
                return walk.sitting.teaching().answer(question.expected());
            }

            @Override
            public boolean isGood() {
                return true;
            }
        });
    }

    @Thorough.FirstOf(3)
    @ParameterizedTest
    @MethodSource("lessons")
    void whoTakesHintsGetsThrough(LibraryEntry lesson) {
        inFourKeys(lesson, (question, walk) -> {
            OpenQuestion open = walk.sitting.question();
            List<String> hints = Stream.of(open.hint(), open.hint(), open.hint(), open.hint())
                    .map(Object::toString)
                    .toList();
            List<String> due = question.hints().stream().map(Object::toString).toList();
            assertEquals(due.subList(0, 2), hints.subList(0, 2));
            assertEquals(due.get(2) + " That was the last hint; tell says the answer.", hints.get(2));
            assertEquals(hints.get(2), hints.get(3));
            assertTrue(due.stream().noneMatch(String::isBlank));
            Verdict why = question.judge(question.expected());
            assertEquals(
                    Grade.RIGHT,
                    why.grade(),
                    () -> question + ": " + why.message().toString());
            assertFalse(question.explain(why).toString().isBlank());
            return walk.sitting.teaching().answer(question.expected());
        });
    }

    @Thorough.FirstOf(3)
    @ParameterizedTest
    @MethodSource("lessons")
    void whoIsToldEverythingGetsThrough(LibraryEntry lesson) {
        Verb tell = new Verbs().find("tell").orElseThrow();
        Sentence nothing = Sentence.parse("", Set.of(), Set.of());
        inFourKeys(lesson, (question, walk) -> {
            Answer told = tell.run(nothing, walk.sitting);
            assertTrue(shown(told).length() > 20, () -> question + ": " + shown(told));
            return told;
        });
    }
}
