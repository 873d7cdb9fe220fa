package monochord.practice.drill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.mastery.Knowledge;
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

    /** Somebody who begins gets the easy third: the scales of a major key and its minor, no mode of another name. */
    @Test
    void whoBeginsIsAskedTheEasySubjects() {
        Turn turn = new Turn(skill("scale-spelling"), Key.parse("G major"));
        Difficulty level = new Difficulty(Knowledge.none());
        SplittableRandom chance = new SplittableRandom(5);
        Set<String> asked = new HashSet<>();
        for (int i = 0; i < 100; i++) {
            asked.add(turn.question(chance::nextLong, null, level).subject());
        }
        assertEquals(Set.of("major", "minor", "harmonic minor"), asked);
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
