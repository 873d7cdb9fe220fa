package monochord.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import monochord.practice.Grade;
import monochord.practice.Mistake;
import monochord.practice.Question;
import monochord.practice.drill.Difficulty;
import monochord.practice.drill.SetReport;
import monochord.practice.drill.Tally;
import monochord.practice.drill.Turn;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.mastery.SkillMastery;
import monochord.record.KeptSet;
import monochord.theory.ReferenceLibraries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Three people who are made up take the day's set on thirty days, each in their own way. None of them may come to a day on
 * which nothing is asked, a set that does not end, or weeks in which nothing new comes though all goes well.
 */
class ThreeLearnersTest {
    private static final long NOON = 1_800_000_000_000L;
    private static final long DAY = 24 * 60 * 60 * 1000L;
    private static final int DAYS = 30;
    /** No set may take longer than this, whoever takes it. */
    private static final long LONGEST = 25 * 60 * 1000L;

    /** Who answers, where they begin, and how. */
    private enum Person {
        /** Knows nothing yet, and learns: each question on one thing makes the next one likelier. */
        BEGINNER(1) {
            @Override
            double knows(Question question, int askedBefore) {
                return Math.min(0.95, 0.3 + 0.15 * askedBefore);
            }
        },
        /** Hears well and reads no notes: what is not for the ear comes slowly. */
        EAR_PLAYER(1) {
            @Override
            double knows(Question question, int askedBefore) {
                return question.isByEar() ? 0.95 : Math.min(0.8, 0.1 + 0.05 * askedBefore);
            }
        },
        /** Has had harmony lessons: nearly all is known from the beginning, by eye. */
        TRAINED(5) {
            @Override
            double knows(Question question, int askedBefore) {
                return question.isByEar() ? 0.6 : 0.97;
            }
        };

        private final int book;

        Person(int book) {
            this.book = book;
        }

        abstract double knows(Question question, int askedBefore);
    }

    /** Thirty days in the life of one person. */
    private static final class Month {
        private final Person person;
        private final Random chance;
        private final List<Evidence> evidence = new ArrayList<>();
        private final List<SetReport> reports = new ArrayList<>();
        private final TreeMap<Integer, Set<SkillInKey>> newOn = new TreeMap<>();
        private KeptSet kept = KeptSet.NONE;
        private long time;

        Month(Person person) {
            this.person = person;
            this.chance = new Random(person.ordinal());
            for (int day = 0; day < DAYS; day++) {
                time = NOON + day * DAY;
                takeSet(day);
            }
        }

        private DailySet.Learner learner() {
            return new DailySet.Learner(Knowledge.of(evidence), person.book, skill -> true);
        }

        private void takeSet(int day) {
            Knowledge before = Knowledge.of(evidence);
            DailySet set = DailySet.of(learner(), time, chance.nextLong());
            QuestionRun run = QuestionRun.set(set, Tally.NONE, new Difficulty(before));
            KeptSet begun = new KeptSet(time, List.of(), Tally.NONE, kept.last());
            newOn.put(day, new HashSet<>());
            while (!run.isOver(time)) {
                answer(run, day);
                assertTrue(time - NOON - day * DAY < LONGEST, person + " is still at it on day " + day);
            }
            QuestionRun.Result result = run.result();
            assertTrue(result.asked() >= 8, person + ", day " + day + ": " + result);
            assertEquals(List.of(), run.rest());
            kept = new KeptSet(time, List.of(), new Tally(result.asked(), result.atOnce()), begun.before());
            reports.add(DailySet.report(kept, before, learner(), time));
        }

        private void answer(QuestionRun run, int day) {
            Question question = run.next(chance::nextLong);
            if (run.isAtInstrument()) {
                assertFalse(question.isByEar(), question.toString());
                time += 60_000;
                run.pass();
                return;
            }
            SkillInKey item = new SkillInKey(question.skillId(), question.key().toString());
            int before = (int) evidence.stream()
                    .filter(one -> one.item().skill().equals(item.skill()))
                    .count();
            if (evidence.stream().noneMatch(one -> one.item().equals(item))) {
                newOn.get(day).add(item);
            }
            boolean knows = chance.nextDouble() < person.knows(question, before);
            time += 30_000;
            Grade grade =
                    question.judge(knows ? question.expected() : slip(question)).grade();
            assertEquals(knows, grade.isRight(), question + ", " + question.expected());
            evidence.add(new Evidence(time, item, grade, 20_000, 0));
            run.note(knows);
        }

        /** What somebody answers who does not know: the first slip of a learner, else nothing that could be right. */
        private static String slip(Question question) {
            return question.mistakes().stream()
                    .map(Mistake::answer)
                    .filter(answer -> !question.judge(answer).grade().isRight())
                    .findFirst()
                    .orElse("?");
        }
    }

    @ParameterizedTest
    @EnumSource(Person.class)
    void meetsNoDeadEnd(Person person) {
        Month month = new Month(person);
        assertEquals(DAYS, month.reports.size());
        Set<String> skills =
                month.evidence.stream().map(one -> one.item().skill()).collect(Collectors.toSet());
        assertTrue(skills.size() >= 3, skills.toString());
        Set<String> keys = month.evidence.stream().map(one -> one.item().key()).collect(Collectors.toSet());
        assertTrue(keys.size() >= 5, new TreeSet<>(keys).toString());
    }

    @Test
    void whoAnswersRightlyMeetsSomethingNewNearlyEveryDay() {
        Month month = new Month(Person.TRAINED);
        long days =
                month.newOn.values().stream().filter(items -> !items.isEmpty()).count();
        assertTrue(days >= DAYS - 6, month.newOn.toString());
        Set<String> skills =
                month.evidence.stream().map(one -> one.item().skill()).collect(Collectors.toSet());
        assertTrue(skills.contains("borrowed-chord"), skills.toString());
    }

    @Test
    void nothingNewIsAddedWhileMuchIsShaky() {
        Month month = new Month(Person.EAR_PLAYER);
        long shaky = Knowledge.of(month.evidence).standings().values().stream()
                .filter(standing -> standing.mastery() < 0.5)
                .count();
        assertTrue(shaky <= 8, "shaky: " + shaky);
    }

    @Test
    void whatIsKnownIsMasteredAndComesBackMoreSeldom() {
        Knowledge knowledge = Knowledge.of(new Month(Person.TRAINED).evidence);
        assertTrue(knowledge.standings().values().stream().anyMatch(SkillMastery::isMastered));
        assertTrue(knowledge.standings().values().stream()
                .anyMatch(standing -> standing.memory().interval() > 7));
    }

    /** Beside ts-fsrs 5.4.2, from all that was asked of each in the month: right answers recalled, others forgotten. */
    @ParameterizedTest
    @EnumSource(Person.class)
    void whatIsDueIsWhatTsFsrsHas(Person person) throws IOException, InterruptedException {
        Month month = new Month(person);
        Map<SkillInKey, List<Evidence>> histories = month.evidence.stream()
                .collect(Collectors.groupingBy(Evidence::item, TreeMap::new, Collectors.toList()));
        List<List<String>> theirs = ReferenceLibraries.answers(
                histories.values().stream().map(ThreeLearnersTest::reviews).toList());
        Knowledge knowledge = Knowledge.of(month.evidence);
        Set<SkillInKey> due = new HashSet<>();
        int at = 0;
        for (Map.Entry<SkillInKey, List<Evidence>> history : histories.entrySet()) {
            List<String> memory = theirs.get(at++);
            double stability = Double.parseDouble(memory.get(0));
            SkillMastery standing = knowledge.of(history.getKey()).orElseThrow();
            assertEquals(stability, standing.memory().stability(), 0.0001 * Math.max(1, stability), history.toString());
            List<Evidence> asked = history.getValue();
            long back = asked.get(asked.size() - 1).time() + Long.parseLong(memory.get(2)) * DAY;
            assertEquals(back - DAY / 2, standing.due(), history.toString());
            if (back - DAY / 2 <= month.time + DAY) {
                due.add(history.getKey());
            }
        }
        assertTrue(at > 8, "only " + at + " things were asked of " + person);
        assertEquals(due, Set.copyOf(DailySet.due(month.learner(), month.time + DAY)));
    }

    /** Days since the answer before, with the time of day unless it was the same day, and 3 for right, 1 for not. */
    private static List<String> reviews(List<Evidence> history) {
        List<String> reviews = new ArrayList<>(List.of("memory"));
        long before = history.get(0).time();
        for (Evidence one : history) {
            double days = (one.time() - before) / (double) DAY;
            reviews.add((days < 0.5 ? 0 : days) + " " + (one.grade().isRight() ? 3 : 1));
            before = one.time();
        }
        return reviews;
    }

    @Test
    void noSetOpensInTheHardestKey() {
        for (Person person : Person.values()) {
            Month month = new Month(person);
            for (int seed = 0; seed < 50; seed++) {
                List<Turn> turns =
                        DailySet.of(month.learner(), month.time + DAY, seed).turns();
                double easiest =
                        turns.stream().mapToDouble(Turn::difficulty).min().orElseThrow();
                assertEquals(easiest, turns.get(0).difficulty());
            }
        }
    }

    @Test
    void whereNothingSoundsNothingIsForTheEar() {
        Month month = new Month(Person.EAR_PLAYER);
        DailySet.Learner deaf = new DailySet.Learner(
                Knowledge.of(month.evidence), 1, skill -> !skill.id().startsWith("ear-"));
        DailySet set = DailySet.of(deaf, month.time + 9 * DAY, 1);
        assertTrue(set.turns().stream().noneMatch(turn -> turn.skill().id().startsWith("ear-")), set.toString());
        assertEquals(
                Optional.empty(), set.fresh().filter(turn -> turn.skill().id().startsWith("ear-")));
    }
}
