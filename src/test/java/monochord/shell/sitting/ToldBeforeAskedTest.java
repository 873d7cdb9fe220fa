package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.course.Course;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Giveaway;
import monochord.practice.Question;
import monochord.shell.playback.Ear;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import monochord.view.Answer;
import monochord.view.Look;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A lesson that has just worked something in one key asks for it in another. */
class ToldBeforeAskedTest {
    /** Wide enough for a paragraph in one line. */
    private static final Look LOOK = new Look(4000, Signs.MUSIC, false, false);

    /** Where the answer is one of few words, which the lesson must say to be understood. */
    private static final Set<String> OF_FEW_WORDS =
            Set.of("motion", "melody-fit", "next-chord", "chord-degree", "degree-quality", "borrowed-source", "steps");

    private static final Course OURS = new Course(Path.of("lessons"));

    static Stream<LibraryEntry> lessons() {
        return OURS.library().entries().stream();
    }

    /** In the key everybody begins in, and in one that is not easy. */
    @ParameterizedTest
    @MethodSource("lessons")
    void whatIsAskedWasNotToldJustBefore(LibraryEntry lesson) {
        List<String> told = new ArrayList<>();
        for (Key key : List.of(Key.parse("C"), Key.parse("Ab"))) {
            for (long seed = 0; seed < Thorough.times(1, 4); seed++) {
                told.addAll(told(lesson, key, seed));
            }
        }
        assertEquals(List.of(), told.stream().distinct().toList());
    }

    private static List<String> told(LibraryEntry lesson, Key key, long seed) {
        Course course = OURS.afresh();
        Sitting sitting = new Sitting(Ear.silent(), new Random(seed)::nextLong, Path.of(""), course);
        sitting.setDisplay(LOOK, 24);
        sitting.settle(key);
        List<String> told = new ArrayList<>();
        StringBuilder said = new StringBuilder(text(LessonStart.alone(lesson, Optional.of(key), sitting)));
        while (sitting.teaching().isInLesson() || sitting.question().isOpen()) {
            if (sitting.question().isOpen()) {
                Question question = sitting.question().question();
                told.addAll(tellingIn(said.toString(), question, key));
                said.setLength(0);
                String after = text(sitting.teaching().answer(question.expected()));
                said.append(after.substring(after.indexOf('\n')));
            } else {
                said.append(text(sitting.teaching().goOn()));
            }
        }
        return told;
    }

    private static String text(Answer answer) {
        return answer.text(LOOK).plain() + "\n";
    }

    private static List<String> tellingIn(String said, Question question, Key learners) {
        return question.isByEar() || OF_FEW_WORDS.contains(question.skillId())
                ? List.of()
                : said.lines()
                        .filter(line -> !line.contains(question.prompt().toString()))
                        .flatMap(line -> Stream.of(line.split("(?<=[.;]) ")))
                        .filter(sentence -> isInItsKey(sentence, question, learners) && tells(sentence, question))
                        .map(sentence -> question + " = " + question.expected() + " after: " + sentence)
                        .toList();
    }

    private static boolean isInItsKey(String sentence, Question question, Key learners) {
        String tonic = question.key().tonic().write(Signs.MUSIC);
        return question.key().tonic().equals(learners.tonic())
                || Pattern.compile("\\b[Ii]n " + tonic + "(?![♭♯\\w])")
                        .matcher(sentence)
                        .find();
    }

    private static boolean tells(String sentence, Question question) {
        String expected = question.expected();
        boolean oneLetter = question.skillId().equals("lowered-degree") && expected.length() == 1;
        return oneLetter
                ? Pattern.compile("lowered.* is " + expected + "(?![♭♯\\w])")
                        .matcher(sentence)
                        .find()
                : Giveaway.isIn(sentence, question);
    }

    @Test
    @DisplayName("it would be seen if it were told")
    void itWouldBeSeen() {
        Question lowered = question("lowered-degree", "b3", "A");
        Key c = Key.parse("C");
        assertEquals(
                1,
                tellingIn("In A the third is C♯, so the lowered third is C.", lowered, c)
                        .size());
        assertTrue(tellingIn("In D the third is F♯, so the lowered third is F.", lowered, c)
                .isEmpty());
        Question five = question("seventh-spelling", "V7", "E");
        assertEquals(1, tellingIn("In E it is B D♯ F♯ A.", five, c).size());
        assertEquals(1, tellingIn("B7  B D♯ F♯ A", five, Key.parse("E")).size());
        assertTrue(tellingIn("In A it is E G♯ B D.", five, c).isEmpty());
    }

    private static Question question(String skill, String subject, String key) {
        return monochord.practice.skill.Skills.find(skill).orElseThrow().question(Key.parse(key), subject);
    }
}
