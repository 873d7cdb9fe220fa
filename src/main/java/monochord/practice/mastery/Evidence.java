package monochord.practice.mastery;

import java.util.Comparator;
import monochord.practice.Grade;

/**
 * What the first answer to a question says about the learner.
 *
 * <p>The natural order is that of time and, at equal times, any fixed one, so that what is gathered does not depend on
 * which of two shells wrote first.
 *
 * @param time in milliseconds since 1970 in UTC
 * @param millis thinking time; all that is too long to say something counts as one
 * @param hints how many were taken; more than three count as three
 */
public record Evidence(long time, SkillInKey item, Grade grade, int millis, int hints) implements Comparable<Evidence> {
    /** Whoever takes longer has left the keyboard: the time says nothing. */
    private static final int LONGEST_MILLIS = 5 * 60 * 1000;

    private static final int MOST_HINTS = 3;

    private static final Comparator<Evidence> ORDER = Comparator.comparingLong(Evidence::time)
            .thenComparing(Evidence::item)
            .thenComparing(Evidence::grade)
            .thenComparingInt(Evidence::millis)
            .thenComparingInt(Evidence::hints);

    public Evidence {
        millis = Math.min(millis, LONGEST_MILLIS + 1);
        hints = Math.min(hints, MOST_HINTS);
    }

    /** Whether the learner answered rightly alone. */
    public boolean isKnown() {
        return grade.isRight() && hints == 0;
    }

    /** Whether the thinking time says something about how fluent the learner is. */
    public boolean isTimed() {
        return isKnown() && millis > 0 && millis <= LONGEST_MILLIS;
    }

    @Override
    public int compareTo(Evidence other) {
        return ORDER.compare(this, other);
    }
}
