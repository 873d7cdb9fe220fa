package monochord.shell.playback;

import java.time.Duration;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/**
 * When hands and ears need a rest: after half an hour at the line or at the keys with no pause of five minutes, and again
 * each half hour after that. Lines and keys count alike and on one clock, so nobody is told twice. Thread-safe.
 *
 * <p>Regular breaks: student sheet of NASM and PAMA on musicians' health. That long practice without breaks is a main
 * reported cause of players' injuries: Ackermann, Frontiers in Psychology 5 (2014), 706. The two times are common practice,
 * no source.
 */
public final class Breaks {
    /** What is said when it is time. */
    public static final Phrase CAUTION = Phrase.sentence(
            "Half an hour has gone. Take five minutes off, for hands and ears: leave the keys and let the arms hang; "
                    + "if anything hurts, stop for today. help hands says more.");

    private static final long STRETCH_MILLIS = Duration.ofMinutes(30).toMillis();
    private static final long PAUSE_MILLIS = Duration.ofMinutes(5).toMillis();

    private final LongSupplier clock;
    private boolean begun;
    private long since;
    private long last;

    /** @param clock milliseconds since 1970 in UTC */
    public Breaks(LongSupplier clock) {
        this.clock = clock;
    }

    /** Takes note that a line was typed. */
    public synchronized void note() {
        note(clock.getAsLong());
    }

    /** Takes note that a line was typed or a key pressed, and tells whether it is time for a rest. */
    public synchronized boolean isDue() {
        long now = clock.getAsLong();
        note(now);
        boolean due = now - since >= STRETCH_MILLIS;
        since = due ? now : since;
        return due;
    }

    /** What comes next; where it goes on after half an hour, a rest is recommended first. */
    public Answer before(Supplier<Answer> next) {
        boolean tired = isDue();
        Answer goesOn = next.get();
        return tired ? Answers.of(Statement.of(CAUTION), goesOn) : goesOn;
    }

    /** A clock that was set back says nothing of how long it has been: a stretch begins anew. */
    private void note(long now) {
        if (!begun || now - last >= PAUSE_MILLIS || now < last) {
            begun = true;
            since = now;
        }
        last = now;
    }
}
