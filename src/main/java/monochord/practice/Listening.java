package monochord.practice;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What there is to hear at a question for the ear.
 *
 * @param asked what sounds when it is put; worked out only when it is to be heard
 * @param as what an answer would have sounded like in its place, from the same key and in the same layout; none for a text
 *     that cannot be read
 */
public record Listening(Supplier<Excerpt> asked, Function<String, Optional<Excerpt>> as) {}
