package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the pupils of the Thursday class gave: kept once, put together, taken away. */
class ClassRecordTest {
    private static final String ANA = "7b-04-ana-lane";
    private static final String BEN = "7b-05";
    private static final String WEEK = "week-12";

    @TempDir
    private Path home;

    private ClassRecord record;

    @BeforeEach
    void open() {
        record = new ClassRecord(home);
    }

    private static List<KeptAttempt> handIn(String pupil, String assignment, long... seeds) {
        return LongStream.of(seeds)
                .mapToObj(seed -> new KeptAttempt(Writer.attempt(seed), pupil, assignment))
                .toList();
    }

    private static List<PupilAnswer> answers(ClassRecord record, long since, String assignment) throws IOException {
        List<PupilAnswer> all = new ArrayList<>();
        record.answers(since, assignment, all::add);
        return all;
    }

    private static KeptAttempt laterBy(long millis, KeptAttempt kept) {
        Attempt a = kept.attempt();
        return new KeptAttempt(
                new Attempt(
                        a.time() + millis,
                        a.lesson(),
                        a.skill(),
                        a.subject(),
                        a.key(),
                        a.seed(),
                        a.answer(),
                        a.grade(),
                        a.misconception(),
                        a.millis(),
                        a.hints(),
                        a.tries()),
                kept.learner(),
                kept.assignment());
    }

    @Test
    void theSameHandInMarkedTwiceCountsOnce() throws IOException {
        List<KeptAttempt> first = handIn(ANA, WEEK, 1, 2, 3);
        assertEquals(3, record.keep(first));
        assertEquals(0, record.keep(first));
        assertEquals(
                0, record.keep(first.stream().map(one -> laterBy(90_000, one)).toList()));
        assertEquals(1, record.keep(handIn(ANA, WEEK, 1, 2, 3, 4)), "what was mended since is new");
        assertEquals(4, answers(record, 0, "").size());
    }

    @Test
    void aQuestionThatStandsTwiceInAnAssignmentCountsTwice() throws IOException {
        List<KeptAttempt> twice = handIn(ANA, WEEK, 1, 1);
        assertEquals(2, record.keep(twice));
        assertEquals(0, record.keep(twice));
    }

    @Test
    void anotherPupilAndAnotherAssignmentAreOthers() throws IOException {
        record.keep(handIn(ANA, WEEK, 1, 2));
        assertEquals(2, record.keep(handIn(BEN, WEEK, 1, 2)));
        assertEquals(2, record.keep(handIn(ANA, "week-13", 1, 2)));
        assertEquals(2, answers(record, 0, "week-13").size());
        assertEquals(0, answers(record, 0, "week-14").size());
        assertEquals(3, answers(record, Writer.attempt(2).time(), "").size());
    }

    @Test
    void anAnswerIsReadAsItWasKept() throws IOException {
        List<KeptAttempt> kept = handIn(ANA, WEEK, 3, 4);
        record.keep(kept);
        List<PupilAnswer> expected = kept.stream()
                .map(one -> new PupilAnswer(
                        one.attempt().time(),
                        ANA,
                        one.attempt().evidence().orElseThrow().item(),
                        one.attempt().misconception(),
                        one.attempt().grade().isRight(),
                        one.attempt().evidence().orElseThrow().isKnown()))
                .toList();
        assertEquals(expected, answers(record, 0, ""));
        assertEquals(
                List.of("not-lowered", ""),
                expected.stream().map(PupilAnswer::misconception).toList());
    }

    @Test
    void knowledgeOfAPupilIsThatOfTheAnswersAlone() throws IOException {
        record.keep(handIn(ANA, WEEK, 1, 2, 3));
        record.keep(handIn(BEN, WEEK, 6, 9));
        List<Evidence> evidence = handIn(ANA, WEEK, 1, 2, 3).stream()
                .map(one -> one.attempt().evidence().orElseThrow())
                .toList();
        assertEquals(Knowledge.of(evidence), record.knowledge(ANA));
    }

    @Test
    void nothingIsThereBeforeSomethingIsKept() throws IOException {
        assertEquals(List.of(), answers(record, 0, ""));
        assertEquals(Knowledge.none(), record.knowledge(ANA));
        assertEquals(0, record.forget(ANA));
        assertFalse(Files.exists(home.resolve(Register.FILE)));
        assertEquals(
                "nothing is on record yet",
                assertThrows(IOException.class, () -> record.copy(home.resolve("copy.db")))
                        .getMessage());
    }

    /** No byte of the pupil's code stays, neither in the file nor in what SQLite keeps beside it. */
    @Test
    void whoIsForgottenLeavesNoByte() throws IOException {
        try (Register register = new Register(home)) {
            register.keep(Writer.attempt(0));
            assertEquals(1, register.knowledge().standings().size());
            record.keep(handIn(ANA, WEEK, 1, 2, 3));
            record.keep(handIn(BEN, WEEK, 4));
            assertTrue(holds(ANA));
            assertEquals(3, record.forget(ANA));
            assertFalse(holds(ANA));
            register.keep(Writer.attempt(8));
            assertEquals(
                    2,
                    register.knowledge().standings().values().iterator().next().asked(),
                    "rows with the numbers of those that went");
        }
        assertEquals(1, answers(record, 0, "").size());
    }

    private boolean holds(String code) throws IOException {
        try (Stream<Path> files = Files.list(home)) {
            for (Path file : files.toList()) {
                if (new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(code)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void twoTeachersRecordsComeTogetherAndNothingOfTheirOwnDoes() throws IOException {
        Path colleague = home.resolve("colleague");
        ClassRecord other = new ClassRecord(colleague);
        try (Register register = new Register(colleague)) {
            register.keep(new Attempt(
                    1,
                    "a-lesson-of-hers",
                    "steps",
                    "I",
                    "C major",
                    1,
                    "C",
                    monochord.practice.Grade.RIGHT,
                    "",
                    1,
                    0,
                    0));
        }
        other.keep(handIn(ANA, WEEK, 1, 2));
        other.keep(handIn(BEN, WEEK, 1));
        other.keep(handIn("9c-01", WEEK, 1));
        record.keep(handIn(ANA, WEEK, 2, 3).stream().map(one -> laterBy(5, one)).toList());
        Path copy = home.resolve("class.db");
        assertEquals(4, other.copy(copy));
        String bytes = new String(Files.readAllBytes(copy), StandardCharsets.ISO_8859_1);
        assertTrue(bytes.contains(BEN) && !bytes.contains("a-lesson-of-hers"));
        assertEquals(List.of("class.db"), namesBeside(copy));
        assertEquals(2, record.join(copy, Set.of(ANA, BEN)::contains));
        assertEquals(0, record.join(copy, Set.of(ANA, BEN)::contains));
        assertEquals(4, answers(record, 0, "").size());
        try (Register register = new Register(home)) {
            register.attempts(own -> assertEquals(null, own));
            assertEquals(1, register.bringBack(copy), "what was left out before");
        }
    }

    private static List<String> namesBeside(Path copy) throws IOException {
        try (Stream<Path> files = Files.list(copy.getParent())) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.contains("class.db"))
                    .toList();
        }
    }

    @Test
    void whatIsNoRecordSaysSo() throws IOException {
        Path strange = Files.writeString(home.resolve("strange.db"), "x".repeat(5000));
        IOException failed = assertThrows(IOException.class, () -> record.join(strange, code -> true));
        assertTrue(failed.getMessage().startsWith(strange + " cannot be used ("), failed.getMessage());
        Path none = home.resolve("none.db");
        assertEquals(
                none + ": there is no such file",
                assertThrows(IOException.class, () -> record.join(none, code -> true))
                        .getMessage());
    }
}
