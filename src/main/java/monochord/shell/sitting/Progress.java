package monochord.shell.sitting;

import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import monochord.text.Phrase;

/** How far something has come that takes its time: told where somebody watches, at most every two seconds. */
public final class Progress {
    private static final long PAUSE_NANOS = 2_000_000_000L;

    private final Consumer<Phrase> watcher;
    private final LongSupplier nanos;
    private long told;

    /** @param nanos a clock that only goes on */
    Progress(Consumer<Phrase> watcher, LongSupplier nanos) {
        this.watcher = watcher;
        this.nanos = nanos;
        told = nanos.getAsLong();
    }

    /** A step is done; what is told of it is made only if it is told. */
    public void step(Supplier<Phrase> how) {
        long now = nanos.getAsLong();
        if (now - told >= PAUSE_NANOS) {
            told = now;
            watcher.accept(how.get());
        }
    }
}
