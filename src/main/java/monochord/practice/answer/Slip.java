package monochord.practice.answer;

import monochord.practice.Misconception;

/**
 * What one wrong procedure gives, and what is said to it.
 *
 * @param message what went wrong and the next move, in one to three sentences
 */
public record Slip<A>(Misconception misconception, A answer, String message) {}
