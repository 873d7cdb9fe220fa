package monochord.practice;

/**
 * A wrong answer that a wrong procedure leads to in one question.
 *
 * @param answer the answer as a learner would type it, in ASCII
 */
public record Mistake(Misconception misconception, String answer) {}
