package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Holds for every skill, every subject, and all thirty major and minor keys; the dearest laws are tried on a spread. */
class EverySkillInEveryKeyTest {
    private static final List<Question> ALL = all();
    private static final Pattern WHOLE = Pattern.compile("[A-ZÀ-Ýiv♭♯].*[.?]");
    private static final Pattern NOT_FOR_READERS =
            Pattern.compile("[A-G][b#]|!|null|  |\\.\\.|\\{|\\.\\p{L}|[A-G]\\p{Lu}\\p{Ll}");

    private static List<Question> all() {
        List<Question> questions = new ArrayList<>();
        for (Skill skill : Skills.all()) {
            Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                    .forEach(key -> skill.subjects(key).forEach(s -> questions.add(skill.question(key, s))));
        }
        return questions;
    }

    private static List<String> offenders(Function<Question, Stream<String>> faults) {
        return offenders(ALL, faults);
    }

    private static List<String> offenders(List<Question> questions, Function<Question, Stream<String>> faults) {
        return questions.stream()
                .flatMap(question -> faults.apply(question).map(fault -> question + ": " + fault))
                .limit(20)
                .toList();
    }

    @Test
    @DisplayName("there is enough to look at")
    void thereIsEnough() {
        assertTrue(Skills.all().size() >= 24, () -> "only " + Skills.all().size() + " skills");
        assertTrue(ALL.size() > 2000, () -> "only " + ALL.size() + " questions");
    }

    @Test
    @DisplayName("the expected answer is right")
    void theExpectedAnswerIsRight() {
        assertEquals(
                List.of(),
                offenders(question -> Stream.of(question.judge(question.expected()))
                        .filter(verdict -> verdict.grade() != Grade.RIGHT)
                        .map(verdict -> question.expected() + " is " + verdict)));
    }

    @Test
    @DisplayName("no right answer is called wrong, however it is written")
    void noRightAnswerIsCalledWrong() {
        assertEquals(
                List.of(),
                offenders(question -> Writings.of(question).stream()
                        .filter(writing -> !question.judge(writing).grade().isRight())
                        .map(writing -> "\"" + writing + "\" is " + question.judge(writing))));
    }

    @Test
    @DisplayName("what a wrong procedure gives is not right, and the verdict names that procedure")
    void eachMistakeIsDiagnosed() {
        assertEquals(
                List.of(),
                offenders(
                        Thorough.spread(ALL, ALL.size() / 8, 0),
                        question -> question.mistakes().stream()
                                .filter(mistake -> !isDiagnosed(question.judge(mistake.answer()), mistake))
                                .map(mistake -> mistake + " is " + question.judge(mistake.answer()))));
    }

    private static boolean isDiagnosed(Verdict verdict, Mistake mistake) {
        boolean judged = verdict.grade() == Grade.WRONG || verdict.grade() == Grade.NEARLY;
        return judged && mistake.misconception().id().equals(verdict.misconception());
    }

    @Test
    @DisplayName("every misconception that has a sentence is met somewhere, but those of skills to come")
    void everyMisconceptionIsMet() {
        List<String> met = ALL.stream()
                .flatMap(question -> question.mistakes().stream())
                .map(mistake -> mistake.misconception().id())
                .distinct()
                .toList();
        List<String> unmet = Stream.of(Misconception.values())
                .map(Misconception::id)
                .filter(id -> !met.contains(id))
                .sorted()
                .toList();
        assertEquals(List.of("letter-repeated"), unmet);
    }

    @Test
    @DisplayName(
            "three hints, a derivation and a prompt, all with the signs of printed music, none with an exclamation mark")
    void sentencesAreWhole() {
        assertEquals(
                List.of(), offenders(Thorough.spread(ALL, ALL.size() / 16, 1), EverySkillInEveryKeyTest::badSentences));
        ALL.forEach(question -> assertEquals(3, Asked.words(question.hints()).size()));
    }

    private static Stream<String> badSentences(Question question) {
        Stream<String> said = Stream.of(
                        Stream.of(
                                question.prompt().toString(),
                                question.derivation().toString(),
                                question.judge(question.expected()).message().toString()),
                        Asked.words(question.hints()).stream(),
                        question.mistakes().stream()
                                .map(mistake -> question.judge(mistake.answer())
                                        .message()
                                        .toString()))
                .flatMap(sentences -> sentences);
        return said.filter(sentence -> !WHOLE.matcher(sentence).matches()
                || NOT_FOR_READERS.matcher(sentence).find());
    }

    @Test
    @DisplayName("no hint gives the answer away before the last step")
    void hintsStopShort() {
        assertEquals(
                List.of(),
                offenders(question -> Asked.words(question.hints()).stream()
                        .limit(1)
                        .filter(hint -> hint.contains(Writings.signs(question.expected()))
                                && question.expected().length() > 4)));
    }

    @Test
    @DisplayName("the expected answer is ASCII")
    void expectedIsAscii() {
        ALL.forEach(question -> assertTrue(question.expected().chars().allMatch(c -> c < 128), question::toString));
    }

    @Test
    @DisplayName("a subject is canonical: asking it again asks the same")
    void subjectsAreCanonical() {
        for (Question question : ALL) {
            Skill skill = Skills.find(question.skillId()).orElseThrow();
            assertEquals(question, skill.question(question.key(), question.subject()));
            assertTrue(skill.subjects(question.key()).contains(question.subject()), question::toString);
        }
    }

    @Test
    @DisplayName("the same seed asks the same question, and seeds reach every subject")
    void seedsDecide() {
        Key key = Key.parse("Eb");
        for (Skill skill : Skills.all()) {
            List<String> drawn = new ArrayList<>();
            for (long seed = 0; seed < 200; seed++) {
                Question question = skill.question(key, seed);
                assertEquals(question, skill.question(key, seed));
                assertEquals(
                        question.prompt().toString(),
                        skill.question(key, seed).prompt().toString());
                assertEquals(seed, question.seed());
                drawn.add(question.subject());
            }
            assertTrue(drawn.containsAll(skill.subjects(key)), skill::id);
        }
    }

    @Test
    @DisplayName("keys go from easy to awkward, and borrowing begins where it needs no flats")
    void keysGoFromEasyToAwkward() {
        assertEquals(
                "C major",
                Skills.find("scale-spelling").orElseThrow().keys().get(0).toString());
        List<Key> borrowing = Skills.find("borrowed-chord").orElseThrow().keys();
        assertEquals("E major", borrowing.get(0).toString());
        assertEquals("Cb major", borrowing.get(14).toString());
        assertFalse(borrowing.stream().distinct().count() < 15);
    }
}
