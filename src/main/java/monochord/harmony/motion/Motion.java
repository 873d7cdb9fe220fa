package monochord.harmony.motion;

import java.util.Locale;

/**
 * How two voices move beside each other.
 *
 * <p>Whether a voice moves, and which way, goes by sound: from G sharp to A flat nothing moves. Whether two voices that go
 * the same way keep their interval goes by letters: from a major to a minor sixth they move in parallel.
 *
 * <p>Source: Open Music Theory, 1st edition (Shaffer, Hughes, Moseley, 2014), on kinds of motion, CC BY-SA 4.0.
 */
public enum Motion {
    CONTRARY,
    /** One moves, the other stays. */
    OBLIQUE,
    /** The same way, to another interval. */
    SIMILAR,
    /** The same way, in the same interval by letters. */
    PARALLEL,
    /** Neither moves. */
    STILL;

    static Motion of(VoiceMove lower, VoiceMove upper) {
        int product = lower.direction() * upper.direction();
        if (product < 0) {
            return CONTRARY;
        } else if (product > 0) {
            return lower.staffSteps() == upper.staffSteps() ? PARALLEL : SIMILAR;
        }
        return lower.isStill() && upper.isStill() ? STILL : OBLIQUE;
    }

    /** Whether both voices move and go the same way. */
    public boolean isSameWay() {
        return this == SIMILAR || this == PARALLEL;
    }

    /** In small letters: {@code contrary}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
