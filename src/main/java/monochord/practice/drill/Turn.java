package monochord.practice.drill;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.LongSupplier;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.theory.Key;

/** One place in a run: a skill to be asked in a key. */
public record Turn(Skill skill, Key key) {
    /** Draws before one gives up finding another question: where there are only two, half of all draws find it. */
    private static final int DRAWS = 40;

    /** How far from the easy end its key stands among those of the skill: from 0 up to 1 for the hardest. */
    public double difficulty() {
        int keys = skill.keys().size();
        int at = skill.keys().indexOf(key);
        return at < 0 || keys == 1 ? 0 : at / (double) (keys - 1);
    }

    /**
     * A question, another than the one before: where there is but one in this key, from another key.
     *
     * @param before the last question, or null
     */
    public Question question(LongSupplier seeds, Question before) {
        return question(seeds, before, skill::question);
    }

    /** The same, no harder than the learner is far. */
    public Question question(LongSupplier seeds, Question before, Difficulty level) {
        return question(seeds, before, (where, seed) -> within(level, where, seed));
    }

    /** What is heard is drawn with its seed alone. */
    private Question within(Difficulty level, Key where, long seed) {
        Question drawn = level.question(skill, where, seed);
        return drawn.isByEar() ? skill.question(where, seed) : drawn;
    }

    private Question question(LongSupplier seeds, Question before, BiFunction<Key, Long, Question> draw) {
        Question drawn = draw.apply(key, seeds.getAsLong());
        for (int i = 1; i < DRAWS && isSame(drawn, before); i++) {
            drawn = draw.apply(key, seeds.getAsLong());
        }
        return isSame(drawn, before) ? draw.apply(elsewhere(before), seeds.getAsLong()) : drawn;
    }

    /** The key after that one, for where the skill has but one question in a key. */
    private Key elsewhere(Question before) {
        List<Key> keys = skill.keys();
        return keys.get((keys.indexOf(before.key()) + 1) % keys.size());
    }

    private static boolean isSame(Question one, Question other) {
        return other != null && one.toString().equals(other.toString());
    }
}
