package monochord.practice.answer;

import java.util.function.Supplier;
import monochord.practice.Misconception;
import monochord.text.Phrase;

/**
 * What one wrong procedure gives, and what is said to it.
 *
 * @param said what went wrong and the next move, in one to three sentences; made only when it is needed
 */
public record ModelledError<A>(Misconception misconception, A answer, Supplier<Phrase> said) {}
