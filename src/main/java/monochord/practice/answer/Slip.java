package monochord.practice.answer;

import java.util.function.Supplier;
import monochord.practice.Misconception;

/**
 * What one wrong procedure gives, and what is said to it.
 *
 * @param said what went wrong and the next move, in one to three sentences; put into words only when it is needed
 */
public record Slip<A>(Misconception misconception, A answer, Supplier<String> said) {}
