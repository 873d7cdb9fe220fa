package monochord.practice;

import java.util.List;
import monochord.text.Phrase;

/**
 * How a teacher leads to the answer.
 *
 * @param hints three: a nudge, the first move, all but the last step
 * @param derivation the whole way, as it would be said at the keyboard
 */
public record Coaching(List<Phrase> hints, Phrase derivation) {
    public Coaching {
        hints = List.copyOf(hints);
    }

    public static Coaching of(Phrase nudge, Phrase firstMove, Phrase allButLast, Phrase derivation) {
        return new Coaching(List.of(nudge, firstMove, allButLast), derivation);
    }
}
