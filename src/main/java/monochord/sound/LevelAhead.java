package monochord.sound;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import javax.sound.midi.Sequence;
import monochord.sound.level.Target;

/**
 * Finds out, beside the thread that plays, what gain brings a sequence to the level of all: at once by its first seconds,
 * and by the whole of it soon after it has begun to sound.
 */
final class LevelAhead implements AutoCloseable {
    private static final int FIRST_SECONDS = 3;
    private static final int MOST_SECONDS = 60;

    private final Sequence sequence;
    private final Optional<Bank> bank;
    private final CompletableFuture<Double> first = new CompletableFuture<>();
    private volatile double latest;
    private volatile boolean closed;

    private LevelAhead(Sequence sequence, Optional<Bank> bank) {
        this.sequence = sequence;
        this.bank = bank;
    }

    /** Begins to measure. */
    static LevelAhead of(Sequence sequence, Optional<Bank> bank) {
        LevelAhead ahead = new LevelAhead(sequence, bank);
        Thread thread = new Thread(ahead::run, "level");
        thread.setDaemon(true);
        thread.start();
        return ahead;
    }

    /** What goes wrong is told to whoever waits for the gain. */
    private void run() {
        try (Loudness loudness = new Loudness(sequence, bank)) {
            know(loudness.through(FIRST_SECONDS));
            for (int seconds = 2 * FIRST_SECONDS; !closed && seconds <= MOST_SECONDS; seconds += FIRST_SECONDS) {
                loudness.through(seconds);
            }
            latest = closed ? latest : Target.gain(loudness.through(MOST_SECONDS));
        } catch (IOException | RuntimeException | LinkageError failed) {
            first.completeExceptionally(failed);
        }
    }

    private void know(double lufs) {
        latest = Target.gain(lufs);
        first.complete(latest);
    }

    /**
     * The gain to begin with, waited for.
     *
     * @throws IOException if the sequence cannot be rendered
     */
    double first() throws IOException {
        try {
            return first.get();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("was interrupted", interrupted);
        } catch (ExecutionException failed) {
            throw new IOException(failed.getCause().getMessage(), failed.getCause());
        }
    }

    /** The best gain that is known. */
    double latest() {
        return latest;
    }

    @Override
    public void close() {
        closed = true;
    }
}
