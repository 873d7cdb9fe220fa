package monochord.classroom.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import monochord.Thorough;
import monochord.classroom.overview.ClassOverview.ClassCell;
import monochord.classroom.overview.SimulatedClass.Planted;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.record.KeptAttempt;
import monochord.record.PupilAnswer;
import org.junit.jupiter.api.Test;

/** The view of a class against what its pupils were made to do. */
class ClassOverviewTest {
    private static final int WEEKS = 10;
    private static final int SEEDS = 100;
    private static final int MISSES_ALLOWED = 5;

    private static PupilAnswer answer(KeptAttempt kept) {
        Evidence evidence = kept.attempt().evidence().orElseThrow();
        return new PupilAnswer(
                evidence.time(),
                kept.learner(),
                evidence.item(),
                kept.attempt().misconception(),
                evidence.grade().isRight(),
                evidence.isKnown());
    }

    private static ClassOverview overview(List<KeptAttempt> attempts) {
        ClassTally tally = new ClassTally();
        attempts.forEach(kept -> tally.add(answer(kept)));
        return tally.overview();
    }

    /** Whether what was planted comes first, before all that was not. */
    private static boolean findsWhatWasPlanted(long seed) {
        SimulatedClass simulated = new SimulatedClass(seed);
        List<FollowedProcedure> found = FollowedProcedure.all(overview(simulated.week(0)));
        List<String> first = found.stream()
                .limit(simulated.planted().size())
                .map(FollowedProcedure::mistake)
                .map(one -> one.skills().get(0) + " " + one.misconception())
                .sorted()
                .toList();
        List<String> planted = simulated.planted().stream()
                .map(Planted::procedure)
                .map(one -> one.skill() + " " + one.misconception())
                .sorted()
                .toList();
        return first.equals(planted);
    }

    /**
     * A class of thirty, three wrong procedures among ten to fifteen pupils each at rates from 0.4 to 0.8, slips at rates from
     * 0.05 to 0.2: after one week nothing else stands above them, in 95 of 100 classes.
     */
    @Test
    void nothingThatWasNotPlantedStandsAboveWhatWas() {
        List<Long> seeds = Thorough.spread(LongStream.range(0, SEEDS).boxed().toList(), 20, 0);
        List<Long> missed =
                seeds.stream().filter(seed -> !findsWhatWasPlanted(seed)).toList();
        assertTrue(missed.size() <= MISSES_ALLOWED * seeds.size() / SEEDS, () -> "missed with the seeds " + missed);
    }

    /** Ten weeks, counted by hand: maps of plain numbers, and knowledge as a learner's own progress has it. */
    @Test
    void figuresAgreeWithAnIndependentCount() {
        SimulatedClass simulated = new SimulatedClass(7);
        List<KeptAttempt> all = IntStream.range(0, WEEKS)
                .boxed()
                .flatMap(week -> simulated.week(week).stream())
                .toList();
        ClassOverview overview = overview(all);
        assertEquals(SimulatedClass.PUPILS, overview.codes().size());
        assertEquals(WEEKS * SimulatedClass.PUPILS * SimulatedClass.QUESTIONS, overview.asked());
        assertEquals(all.stream().filter(one -> one.attempt().grade().isRight()).count(), overview.right());
        assertEquals(expectedGrid(all), overview.grid());
        assertEquals(expectedMistakes(all), told(overview));
        assertEquals(
                IntStream.range(0, WEEKS).mapToObj(week -> 600).toList(),
                overview.weeks().stream().map(ClassOverview.ClassWeek::asked).toList());
        assertEquals(
                "2026-09-07T00:00:00Z",
                Instant.ofEpochMilli(overview.weeks().get(0).from()).toString());
    }

    private static Map<SkillInKey, ClassCell> expectedGrid(List<KeptAttempt> all) {
        Map<String, List<Evidence>> byPupil = new TreeMap<>();
        all.forEach(kept -> byPupil.computeIfAbsent(kept.learner(), code -> new ArrayList<>())
                .add(kept.attempt().evidence().orElseThrow()));
        Map<String, Knowledge> known = new TreeMap<>();
        byPupil.forEach((code, evidence) -> known.put(code, Knowledge.of(evidence)));
        Map<SkillInKey, ClassCell> grid = new TreeMap<>();
        all.forEach(kept ->
                grid.computeIfAbsent(kept.attempt().evidence().orElseThrow().item(), item -> cell(item, known)));
        return grid;
    }

    private static ClassCell cell(SkillInKey item, Map<String, Knowledge> known) {
        List<Double> masteries = new ArrayList<>();
        List<String> below = new ArrayList<>();
        int[] counts = new int[2];
        known.forEach((code, knowledge) -> knowledge.of(item).ifPresent(standing -> {
            masteries.add(standing.mastery());
            counts[0] += standing.asked();
            counts[1] += standing.right();
            if (standing.mastery() < 0.5) {
                below.add(code);
            }
        }));
        double median = masteries.stream()
                .sorted()
                .skip((masteries.size() - 1) / 2)
                .limit(2 - masteries.size() % 2)
                .mapToDouble(one -> one)
                .average()
                .orElseThrow();
        return new ClassCell(median, counts[0], counts[1], masteries.size(), below);
    }

    private static Map<String, Integer> expectedMistakes(List<KeptAttempt> all) {
        Map<String, Integer> counts = new TreeMap<>();
        for (KeptAttempt kept : all) {
            if (!kept.attempt().misconception().isEmpty()
                    && !kept.attempt().grade().isRight()) {
                counts.merge(kept.attempt().misconception() + " " + kept.learner(), 1, Integer::sum);
            }
        }
        return counts;
    }

    private static Map<String, Integer> told(ClassOverview overview) {
        Map<String, Integer> told = new TreeMap<>();
        overview.mistakesOfAllSkills()
                .forEach(one -> one.byPupil()
                        .forEach((code, times) -> told.put(one.misconception().id() + " " + code, times)));
        return told;
    }

    @Test
    void theOrderInWhichFilesAreMarkedDoesNotMatter() {
        List<KeptAttempt> all = new ArrayList<>(new SimulatedClass(3).week(0));
        ClassOverview overview = overview(all);
        Collections.reverse(all);
        assertEquals(overview, overview(all));
    }

    @Test
    void theCommonestMistakeComesFirst() {
        List<Integer> counts = overview(new SimulatedClass(5).week(0)).mistakesOfAllSkills().stream()
                .map(MistakeCount::count)
                .toList();
        assertEquals(counts.stream().sorted(Comparator.reverseOrder()).toList(), counts);
        assertEquals(new TreeSet<>(counts).last(), counts.get(0));
    }

    @Test
    void nobodyIsNothing() {
        ClassOverview none = new ClassTally().overview();
        assertEquals(
                new ClassOverview(List.of(), new TreeMap<>(new HashMap<SkillInKey, ClassCell>()), List.of(), List.of()),
                none);
        assertEquals(List.of(), NextTopic.all(none));
    }

    /** One pupil who takes the same wrong turn twice, in whole sentences. */
    @Test
    void whatComesNextIsSaidWithItsEvidence() {
        ClassTally tally = new ClassTally();
        for (int i = 0; i < 4; i++) {
            tally.add(new PupilAnswer(
                    i, "7b-04", new SkillInKey("lowered-degree", "Eb major"), "not-lowered", false, false));
            tally.add(new PupilAnswer(i, "7b-05", new SkillInKey("lowered-degree", "C major"), "", true, true));
            tally.add(new PupilAnswer(i, "7b-05", new SkillInKey("steps", "G major"), "", false, false));
        }
        List<NextTopic> topics = NextTopic.all(tally.overview());
        assertEquals(
                List.of("Lowered degrees: go over this rule. A flat in front of a degree says: a half step below the"
                        + " degree of the major scale."),
                topics.stream().map(topic -> topic.sentence().toString()).toList());
        assertEquals(
                "The degree not lowered: 4 times in 8 answers, by 7b-04.",
                topics.get(0).evidence().toString());
        assertEquals("[Eb major]", topics.get(0).keys().toString());
    }

    @Test
    void whereMistakesHaveNoNameTheKeysAreSaid() {
        ClassTally tally = new ClassTally();
        for (String code : List.of("7b-04", "7b-05", "7b-06")) {
            tally.add(new PupilAnswer(1, code, new SkillInKey("triad-spelling", "Db major"), "", false, false));
            tally.add(new PupilAnswer(1, code, new SkillInKey("triad-spelling", "C major"), "", true, true));
        }
        NextTopic topic = NextTopic.all(tally.overview()).get(0);
        assertEquals(
                "Spelling triads: practise it in D♭ major.", topic.sentence().toString());
        assertEquals(
                "There none of 3 answers was right at the first try; not yet sure: 7b-04, 7b-05 and 7b-06.",
                topic.evidence().toString());
    }
}
