package monochord.practice.mastery;

/**
 * How well something is remembered, by the model FSRS-6 with its published default weights.
 *
 * <p>Source: the formulas and weights of the open-spaced-repetition project, reference implementation of version 6
 * (state of 2026-03-10, MIT); the family of models: Ye, Su and Cao, "A stochastic shortest path algorithm for optimizing
 * spaced repetition scheduling", KDD 2022, from memory.
 *
 * @param stability days after which it is recalled with probability 0.9; at least 0.001
 * @param difficulty from 1 to 10
 */
public record Memory(double stability, double difficulty) {
    private static final double[] W = {
        0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629,
        1.6483, 0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542
    };
    private static final double DECAY = -W[20];
    private static final double RECALL_AT_STABILITY = 0.9;
    private static final double FACTOR = Math.pow(RECALL_AT_STABILITY, 1 / DECAY) - 1;
    private static final double LEAST_STABILITY = 0.001;
    private static final double MOST_STABILITY = 36_500;
    private static final double EASIEST = 1;
    private static final double HARDEST = 10;

    /** Worked out once, for a long record asks for them a million times. */
    private static final double GROWTH = Math.exp(W[8]);

    private static final double DRAWN_TO = firstDifficulty(Rating.FLUENT);
    private static final double LAPSE = Math.exp(W[17] * W[18]);
    private static final double[] SAME_DAY_GROWTH = {
        sameDayGrowth(1), sameDayGrowth(2), sameDayGrowth(3), sameDayGrowth(4)
    };

    /** Below half a day no night lies between, and the model has a rule of its own for that. */
    private static final double SAME_DAY = 0.5;

    public Memory {
        stability = Math.max(LEAST_STABILITY, Math.min(MOST_STABILITY, stability));
        difficulty = Math.max(EASIEST, Math.min(HARDEST, difficulty));
    }

    /** After the first answer ever. */
    public static Memory first(Rating rating) {
        return new Memory(W[rating.number() - 1], firstDifficulty(rating));
    }

    private static double firstDifficulty(Rating rating) {
        return W[4] - Math.exp(W[5] * (rating.number() - 1)) + 1;
    }

    /**
     * The probability that it is recalled.
     *
     * @param days since the last answer
     */
    public double recall(double days) {
        return Math.pow(1 + FACTOR * days / stability, DECAY);
    }

    /**
     * After another answer.
     *
     * @param days since the last one, 0 or more
     */
    public Memory after(double days, Rating rating) {
        return new Memory(
                days < SAME_DAY
                        ? sameDay(rating)
                        : rating == Rating.FORGOTTEN ? forgotten(days) : recalled(days, rating),
                nextDifficulty(rating));
    }

    /** No answer that was right lowers it; here the implementations differ for laboured ones, and we go with ts-fsrs 5.4.2. */
    private double sameDay(Rating rating) {
        double growth = SAME_DAY_GROWTH[rating.ordinal()] * Math.pow(stability, -W[19]);
        return stability * (rating == Rating.FORGOTTEN ? growth : Math.max(1, growth));
    }

    private static double sameDayGrowth(int rating) {
        return Math.exp(W[17] * (rating - 3 + W[18]));
    }

    private double forgotten(double days) {
        double left = W[11]
                * Math.pow(difficulty, -W[12])
                * (Math.pow(stability + 1, W[13]) - 1)
                * Math.exp((1 - recall(days)) * W[14]);
        return Math.min(left, stability / LAPSE);
    }

    private double recalled(double days, Rating rating) {
        double growth =
                GROWTH * (11 - difficulty) * Math.pow(stability, -W[9]) * (Math.exp((1 - recall(days)) * W[10]) - 1);
        return stability * (1 + growth * bonus(rating));
    }

    private static double bonus(Rating rating) {
        return rating == Rating.LABOURED ? W[15] : rating == Rating.FLUENT ? W[16] : 1;
    }

    private double nextDifficulty(Rating rating) {
        double change = -W[6] * (rating.number() - 3);
        double damped = difficulty + change * (HARDEST - difficulty) / 9;
        return W[7] * DRAWN_TO + (1 - W[7]) * damped;
    }

    /** Whole days, 1 at least, after which it is recalled with probability 0.9. */
    public long interval() {
        return Math.max(1, Math.round(stability));
    }
}
