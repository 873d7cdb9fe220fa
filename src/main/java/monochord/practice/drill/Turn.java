package monochord.practice.drill;

import java.util.function.LongSupplier;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.theory.Key;

/** One place in a run: a skill to be asked in a key. */
public record Turn(Skill skill, Key key) {
    /** Draws before one gives up finding another question: where there are only two, half of all draws find it. */
    private static final int DRAWS = 40;

    /**
     * A question, another than the one before wherever the skill has two in this key.
     *
     * @param before the last question, or null
     */
    public Question question(LongSupplier seeds, Question before) {
        Question drawn = skill.question(key, seeds.getAsLong());
        for (int i = 1; i < DRAWS && isSame(drawn, before); i++) {
            drawn = skill.question(key, seeds.getAsLong());
        }
        return drawn;
    }

    private static boolean isSame(Question one, Question other) {
        return other != null && one.toString().equals(other.toString());
    }
}
