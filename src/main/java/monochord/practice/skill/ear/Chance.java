package monochord.practice.skill.ear;

import java.util.List;
import java.util.SplittableRandom;

/** Draws for one question: the same seed gives the same, and not what the choice of the subject was drawn with. */
final class Chance {
    private static final long APART = 0x5EED_0F_0EA5L;

    private final SplittableRandom random;

    Chance(long seed) {
        random = new SplittableRandom(seed ^ APART);
    }

    /** @throws IllegalArgumentException if there is nothing to draw from */
    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
