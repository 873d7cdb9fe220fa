package monochord.shell.sitting;

import java.time.Duration;
import java.util.Optional;
import monochord.view.Answer;
import monochord.view.Saying;

/**
 * Reminds of a rest for hands and ears, once in a sitting, where it goes on after half an hour.
 *
 * <p>Regular breaks: student sheet of NASM and PAMA on musicians' health; half an hour is common practice, no source.
 */
final class BreakReminder {
    private static final long HALF_AN_HOUR = Duration.ofMinutes(30).toMillis();
    private static final String REMINDER =
            "Half an hour has gone. Take five minutes off, for hands and ears; help hands says more.";

    private boolean began;
    private long since;
    private boolean said;

    /** @param now milliseconds since 1970 in UTC; the first call begins the half hour */
    Optional<Answer> due(long now) {
        if (!began) {
            began = true;
            since = now;
        }
        if (said || now - since < HALF_AN_HOUR) {
            return Optional.empty();
        }
        said = true;
        return Optional.of(Saying.of(REMINDER));
    }
}
