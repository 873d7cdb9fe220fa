package monochord.practice.drill;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import monochord.theory.Key;

/**
 * Skills and keys, mixed: every key comes once before one comes again, never one twice in a row, and the skills take
 * turns.
 */
public record Mix(List<Skill> skills, List<Key> keys) {
    private static final Map<String, String> WAYS_BACK = Map.of(
            "degree-chord", "chord-degree",
            "chord-degree", "degree-chord",
            "progression-in-key", "progression-numbers",
            "progression-numbers", "progression-in-key");

    /** @throws IllegalArgumentException if there is no skill or no key */
    public Mix {
        skills = List.copyOf(skills);
        keys = List.copyOf(keys);
        if (skills.isEmpty() || keys.isEmpty()) {
            throw new IllegalArgumentException("a mix needs a skill and a key, not " + skills + " and " + keys);
        }
    }

    /** A skill in both directions, where there is a way back: from degree to chord and from chord to degree. */
    public static Mix of(Skill skill, List<Key> keys) {
        return new Mix(wayBack(skill).map(back -> List.of(skill, back)).orElse(List.of(skill)), keys);
    }

    /** The skill that asks for what this one gives, if there is one. */
    public static Optional<Skill> wayBack(Skill skill) {
        return Optional.ofNullable(WAYS_BACK.get(skill.id())).flatMap(Skills::find);
    }

    /** So many turns; the same seed gives the same ones. */
    public List<Turn> turns(int count, long seed) {
        Random chance = new Random(seed);
        List<Key> order = new ArrayList<>();
        while (order.size() < count) {
            order.addAll(shuffled(chance, order.isEmpty() ? null : order.get(order.size() - 1)));
        }
        beginEasier(order);
        return IntStream.range(0, count)
                .mapToObj(i -> new Turn(skills.get(i % skills.size()), order.get(i)))
                .toList();
    }

    /** Nothing opens in the hardest key, where there is another. */
    private void beginEasier(List<Key> order) {
        boolean isHardest =
                !order.isEmpty() && keys.stream().allMatch(key -> difficulty(key) <= difficulty(order.get(0)));
        if (isHardest && order.size() > 1) {
            Collections.swap(order, 0, 1);
        }
    }

    private double difficulty(Key key) {
        return new Turn(skills.get(0), key).difficulty();
    }

    private List<Key> shuffled(Random chance, Key before) {
        List<Key> round = new ArrayList<>(keys);
        Collections.shuffle(round, chance);
        if (round.size() > 1 && round.get(0).equals(before)) {
            Collections.swap(round, 0, round.size() - 1);
        }
        return round;
    }
}
