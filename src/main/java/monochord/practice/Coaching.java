package monochord.practice;

import java.util.List;

/**
 * How a teacher leads to the answer.
 *
 * @param hints three: a nudge, the first move, all but the last step
 * @param derivation the whole way, as it would be said at the keyboard
 */
public record Coaching(List<String> hints, String derivation) {
    public Coaching {
        hints = List.copyOf(hints);
    }

    public static Coaching of(String nudge, String firstMove, String allButLast, String derivation) {
        return new Coaching(List.of(nudge, firstMove, allButLast), derivation);
    }
}
