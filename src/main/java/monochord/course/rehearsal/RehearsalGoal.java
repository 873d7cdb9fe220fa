package monochord.course.rehearsal;

import java.util.List;
import monochord.theory.Key;

/**
 * What a rehearsal is for.
 *
 * @param bars of the place, at least 1
 * @param firstBar the number of its first bar, for words
 * @param tempo beats a minute at which it is to stand
 * @param keys in which it is to stand, in this order, at least one
 */
public record RehearsalGoal(int bars, int firstBar, int tempo, List<Key> keys) {
    /** @throws IllegalArgumentException if there is no bar or no key */
    public RehearsalGoal {
        keys = List.copyOf(keys);
        if (bars < 1 || keys.isEmpty()) {
            throw new IllegalArgumentException("a rehearsal needs a bar and a key, not " + bars + " and " + keys);
        }
    }

    /** Below it nobody feels a pulse any more. */
    int slowest() {
        return Math.max(30, tempo * 2 / 5);
    }
}
