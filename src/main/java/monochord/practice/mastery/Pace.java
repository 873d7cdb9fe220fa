package monochord.practice.mastery;

/**
 * How long a learner thinks about right answers given alone: their geometric mean, in which the last ones weigh most, so
 * that one long pause does not count for many quick answers and progress shows.
 *
 * @param answers how many answers it rests on
 * @param logMillis the mean of the natural logarithms of the milliseconds
 */
public record Pace(int answers, double logMillis) {
    public static final Pace NONE = new Pace(0, 0);

    /** From here on each new answer weighs one in so many. */
    private static final int WINDOW = 12;

    Pace plus(Evidence evidence) {
        return evidence.isTimed() ? plus(Math.log(evidence.millis())) : this;
    }

    private Pace plus(double next) {
        return new Pace(answers + 1, logMillis + (next - logMillis) / Math.min(answers + 1, WINDOW));
    }

    /** Milliseconds for an answer; meaningless while there is none. */
    public double millis() {
        return Math.exp(logMillis);
    }
}
