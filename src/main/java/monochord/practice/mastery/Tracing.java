package monochord.practice.mastery;

/**
 * Bayesian knowledge tracing: how probable it is that a skill is known, after each right or wrong answer.
 *
 * <p>Source: Corbett and Anderson, "Knowledge tracing: Modeling the acquisition of procedural knowledge", User Modeling
 * and User-Adapted Interaction 4 (1994/95), pages 253 to 278. All numbers are probabilities.
 *
 * @param start known before the first question
 * @param learn learned at one question, if it was not known
 * @param guess answered rightly though it is not known
 * @param slip answered wrongly though it is known
 */
public record Tracing(double start, double learn, double guess, double slip) {
    /** From here on more of the same in one go teaches little; the usual line in the literature, from memory. */
    public static final double MASTERY = 0.95;

    /** For an answer that is typed out: it is seldom guessed. */
    public static final Tracing TYPED = new Tracing(0.20, 0.10, 0.05, 0.10);

    /**
     * @throws IllegalArgumentException if a number is no probability, or guess and slip together reach 1, for then a right
     *     answer would speak against knowing
     */
    public Tracing {
        if (!isProbability(start) || !isProbability(learn) || !isProbability(guess) || !isProbability(slip)) {
            throw new IllegalArgumentException("probabilities lie between 0 and 1");
        }
        if (guess + slip >= 1) {
            throw new IllegalArgumentException("guess and slip must stay below 1 together, not " + (guess + slip));
        }
    }

    private static boolean isProbability(double number) {
        return number >= 0 && number <= 1;
    }

    /** For an answer picked out of so many. */
    public static Tracing choiceOf(int choices) {
        return new Tracing(TYPED.start, TYPED.learn, 1.0 / choices, TYPED.slip);
    }

    /** What fits a skill: the qualities of triads are four, all other answers are typed out. */
    public static Tracing of(String skill) {
        return skill.endsWith("-quality") ? FOUR_WAYS : TYPED;
    }

    private static final Tracing FOUR_WAYS = choiceOf(4);

    /** How probable a right answer is when the skill is known with probability {@code known}. */
    public double right(double known) {
        return known * (1 - slip) + (1 - known) * guess;
    }

    /** Known, in the light of the answer. */
    public double given(double known, boolean right) {
        return right ? known * (1 - slip) / right(known) : known * slip / (known * slip + (1 - known) * (1 - guess));
    }

    /** Known when the next question comes: in the light of the answer, or learned from it. */
    public double after(double known, boolean right) {
        double given = given(known, right);
        return given + (1 - given) * learn;
    }
}
