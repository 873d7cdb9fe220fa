package monochord.practice.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.mastery.Evidence;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MixTest {
    private static final List<Key> THREE = List.of(Key.parse("D"), Key.parse("A"), Key.parse("Eb"));

    private static Stream<Skill> skills() {
        return Skills.all().stream();
    }

    private static Skill skill(String id) {
        return Skills.find(id).orElseThrow();
    }

    @Test
    void everyKeyComesOnceBeforeOneComesAgain() {
        for (long seed = 0; seed < 100; seed++) {
            List<Key> keys = Mix.of(skill("interval"), THREE).turns(9, seed).stream()
                    .map(Turn::key)
                    .toList();
            for (int round = 0; round < 9; round += 3) {
                assertEquals(new HashSet<>(THREE), new HashSet<>(keys.subList(round, round + 3)));
            }
            for (int i = 1; i < 9; i++) {
                assertNotEquals(keys.get(i - 1), keys.get(i));
            }
        }
    }

    @Test
    void theSameSeedMixesTheSameWay() {
        Mix mix = Mix.of(skill("interval"), Key.majorKeys());
        assertEquals(mix.turns(10, 4), mix.turns(10, 4));
        assertNotEquals(mix.turns(10, 4), mix.turns(10, 5));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            degree-chord        | degree-chord chord-degree degree-chord chord-degree
            chord-degree        | chord-degree degree-chord chord-degree degree-chord
            progression-numbers | progression-numbers progression-in-key progression-numbers progression-in-key
            triad-spelling      | triad-spelling triad-spelling triad-spelling triad-spelling
            """)
    void bothDirectionsTakeTurns(String id, String turns) {
        assertEquals(
                List.of(turns.split(" ")),
                Mix.of(skill(id), THREE).turns(4, 1).stream()
                        .map(turn -> turn.skill().id())
                        .toList());
    }

    /** In one key alone, which is where it would happen. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("skills")
    void noQuestionIsAskedTwiceInARow(Skill skill) {
        for (Key key : skill.keys()) {
            SplittableRandom chance = new SplittableRandom(2);
            Question before = null;
            for (int i = 0; i < 30; i++) {
                Question question = new Turn(skill, key).question(() -> chance.nextInt(1 << 30), before);
                assertNotEquals(String.valueOf(before), question.toString());
                before = question;
            }
        }
    }

    @Test
    void aMixNeedsASkillAndAKey() {
        assertEquals(
                "a mix needs a skill and a key, not [] and []",
                assertThrows(IllegalArgumentException.class, () -> new Mix(List.of(), List.of()))
                        .getMessage());
    }

    /** Somebody who begins is asked for the major scale alone, and for the easy third of other skills. */
    @Test
    void whoBeginsIsAskedTheEasySubjects() {
        assertEquals(Set.of("major"), asked("scale-spelling", Knowledge.none()));
        assertEquals(Set.of("P5", "P4", "M2", "M3"), asked("interval", Knowledge.none()));
        assertEquals(Set.of("1 4 5 1", "4 1 5 6-", "1 6- 4 5"), asked("progression-in-key", Knowledge.none()));
    }

    private static Set<String> asked(String skill, Knowledge knowledge) {
        Turn turn = new Turn(skill(skill), Key.parse("G major"));
        Difficulty level = new Difficulty(knowledge);
        SplittableRandom chance = new SplittableRandom(5);
        Set<String> asked = new HashSet<>();
        for (int i = 0; i < 100; i++) {
            asked.add(turn.question(chance::nextLong, null, level).subject());
        }
        return asked;
    }

    /** One right answer in one key opens nothing that no lesson has taught yet; many in many keys open all. */
    @Test
    void harderSubjectsComeWithTheKeys() {
        assertEquals(Set.of("major"), asked("steps", answered("steps", 1)));
        assertEquals(8, asked("steps", answered("steps", 8)).size());
    }

    /** Right and fluent, one day in each of so many keys, four days on end. */
    private static Knowledge answered(String skill, int keys) {
        List<Evidence> answers = new ArrayList<>();
        for (int day = 0; day < 4; day++) {
            for (Key key : skill(skill).keys().subList(0, keys)) {
                SkillInKey item = new SkillInKey(skill, key.toString());
                answers.add(new Evidence(day * 86_400_000L, item, Grade.RIGHT, 4000, 0));
            }
        }
        return Knowledge.of(answers);
    }

    /** Of the fifteen keys, the first five to begin with; a borrowed chord begins where it needs no flats. */
    @Test
    void whoBeginsIsAskedInTheEasyKeys() {
        Difficulty level = new Difficulty(Knowledge.none());
        assertEquals(
                "[C major, G major, F major, D major, Bb major]",
                level.keys(skill("triad-spelling")).toString());
        assertEquals(5, level.keys(skill("borrowed-chord")).size());
        assertEquals("E major", level.keys(skill("borrowed-chord")).get(0).toString());
    }
}
