package monochord.practice.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import monochord.practice.Grade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KnowledgeTest {
    private static final long HOUR = 60 * 60 * 1000;
    private static final long DAY = 24 * HOUR;
    private static final SkillInKey TRIADS_IN_D = new SkillInKey("triad-spelling", "D major");
    private static final SkillInKey TRIADS_IN_GB = new SkillInKey("triad-spelling", "Gb major");

    private static Evidence right(long time, SkillInKey item, int seconds) {
        return new Evidence(time, item, Grade.RIGHT, seconds * 1000, 0);
    }

    private static Evidence wrong(long time, SkillInKey item) {
        return new Evidence(time, item, Grade.WRONG, 10_000, 0);
    }

    private static SkillMastery in(SkillInKey item, Knowledge knowledge) {
        return knowledge.of(item).orElseThrow();
    }

    /** The second worked sequence of the tracing test: wrong, right, right, right. */
    @Test
    void masteryIsTracedForASkillInOneKey() {
        Knowledge knowledge = Knowledge.of(List.of(
                wrong(1, TRIADS_IN_D),
                right(2, TRIADS_IN_D, 10),
                right(3, TRIADS_IN_D, 10),
                wrong(4, TRIADS_IN_GB),
                right(5, TRIADS_IN_D, 10)));
        assertEquals(0.9991, in(TRIADS_IN_D, knowledge).mastery(), 0.00005);
        assertEquals(0.1231, in(TRIADS_IN_GB, knowledge).mastery(), 0.00005);
        assertTrue(in(TRIADS_IN_D, knowledge).isMastered());
        assertFalse(in(TRIADS_IN_GB, knowledge).isMastered());
        assertEquals(Optional.empty(), knowledge.of(new SkillInKey("interval", "D major")));
    }

    /** The five reviews of the memory test, at any time of the day. */
    @Test
    void whatIsKeptFollowsTheDaysBetween() {
        Knowledge knowledge = Knowledge.of(List.of(
                right(0, TRIADS_IN_D, 10),
                right(2 * DAY, TRIADS_IN_D, 10),
                right(13 * DAY, TRIADS_IN_D, 10),
                wrong(59 * DAY, TRIADS_IN_D),
                right(62 * DAY, TRIADS_IN_D, 10)));
        SkillMastery standing = in(TRIADS_IN_D, knowledge);
        assertEquals(7.7782, standing.memory().stability(), 0.00005);
        assertFalse(standing.isDue(62 * DAY + 7 * DAY));
        assertTrue(standing.isDue(62 * DAY + 8 * DAY - 12 * HOUR));
        assertEquals(4, standing.right());
        assertEquals(5, standing.asked());
    }

    @Test
    void whoPractisesALittleEarlierEachDayStillHasANightBetween() {
        Knowledge knowledge = Knowledge.of(List.of(
                right(0, TRIADS_IN_D, 10), right(23 * HOUR, TRIADS_IN_D, 10), right(46 * HOUR, TRIADS_IN_D, 10)));
        assertTrue(in(TRIADS_IN_D, knowledge).memory().stability() > 10);
    }

    @Test
    void theSameRecordGivesTheSameKnowledgeInAnyOrder() {
        List<Evidence> evidence = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            Grade grade = List.of(Grade.RIGHT, Grade.NEARLY, Grade.WRONG, Grade.REMARK)
                    .get(i * 7 % 4);
            SkillInKey item = i % 3 == 0 ? TRIADS_IN_D : TRIADS_IN_GB;
            evidence.add(new Evidence(i / 10 * 9 * HOUR, item, grade, 3000 + i * 997 % 20_000, i % 3));
        }
        Knowledge knowledge = Knowledge.of(evidence);
        Random chance = new Random(4);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(evidence, chance);
            assertEquals(knowledge, Knowledge.of(evidence));
        }
    }

    @Test
    void piecesOfOneTimeAreGatheredInAnyOrder() {
        KnowledgeBuilder one = new KnowledgeBuilder();
        KnowledgeBuilder other = new KnowledgeBuilder();
        one.add(right(5, TRIADS_IN_D, 3));
        one.add(wrong(5, TRIADS_IN_D));
        other.add(wrong(5, TRIADS_IN_D));
        other.add(right(5, TRIADS_IN_D, 3));
        assertEquals(one.knowledge(), other.knowledge());
        assertNotEquals(one.knowledge(), Knowledge.of(List.of(right(5, TRIADS_IN_D, 3), wrong(6, TRIADS_IN_D))));
        assertThrows(IllegalArgumentException.class, () -> one.add(wrong(4, TRIADS_IN_D)));
    }

    @Test
    void aSlowKeyIsSeenBesideTheOthers() {
        List<Evidence> evidence = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            evidence.add(right(2 * i, TRIADS_IN_D, 4));
            evidence.add(right(2 * i + 1, TRIADS_IN_GB, 16));
        }
        Knowledge knowledge = Knowledge.of(evidence);
        Pace own = knowledge.pace("triad-spelling");
        assertEquals(8000, own.millis(), 1500);
        assertTrue(in(TRIADS_IN_GB, knowledge).isSlow(own));
        assertFalse(in(TRIADS_IN_D, knowledge).isSlow(own));
    }

    @ParameterizedTest(name = "{0} s from now: {1}")
    @CsvSource(delimiter = '|', nullValues = "none", textBlock = """
            0   | Gb
            30  | Gb
            100 | Gb D
            """)
    void theWeakestComesFirstAndAsMuchAsFits(int seconds, String keys) {
        Knowledge knowledge = Knowledge.of(List.of(
                right(0, TRIADS_IN_D, 10),
                wrong(0, TRIADS_IN_GB),
                right(9 * DAY, new SkillInKey("interval", "C major"), 10)));
        Due due = Due.within(seconds, 9 * DAY, knowledge);
        assertEquals(
                keys,
                due.items().stream()
                        .map(item -> item.key().replace(" major", ""))
                        .reduce((a, b) -> a + " " + b)
                        .orElse(null));
    }

    @Test
    void nothingIsDueToSomebodyWhoWasNeverAsked() {
        assertEquals(new Due(List.of(), 0), Due.at(9 * DAY, Knowledge.none()));
    }

    /** Ten seconds to think at the learner's own pace, ten around it. */
    @Test
    void aQuestionTakesTheLearnersOwnTime() {
        Knowledge knowledge = Knowledge.of(List.of(right(0, TRIADS_IN_D, 10)));
        assertEquals(20, Due.secondsFor(TRIADS_IN_D, knowledge), 0.001);
        assertEquals(20, Due.secondsFor(TRIADS_IN_GB, knowledge), 0.001);
        assertEquals(30, Due.secondsFor(new SkillInKey("interval", "D major"), knowledge), 0.001);
    }

    @Test
    void onlyTheFirstTryIsEvidenceAndWhatCannotBeReadIsNoAttempt() {
        Attempt first = attempt(Grade.WRONG, 0);
        assertEquals(Optional.of(new Evidence(7, TRIADS_IN_D, Grade.WRONG, 9000, 1)), first.evidence());
        assertEquals(Optional.empty(), attempt(Grade.RIGHT, 1).evidence());
        assertEquals(
                "an answer that cannot be read is no attempt: D F A",
                assertThrows(IllegalArgumentException.class, () -> attempt(Grade.UNREADABLE, 0))
                        .getMessage());
    }

    private static Attempt attempt(Grade grade, int tries) {
        return new Attempt(7, "", "triad-spelling", "D", "D major", 0, "D F A", grade, "wrong-quality", 9000, 1, tries);
    }
}
