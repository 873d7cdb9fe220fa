package monochord.sound.play;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import javax.sound.midi.Sequence;
import monochord.sound.Bank;
import monochord.sound.Loudness;
import monochord.sound.level.LoudnessTarget;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * Finds out, beside the thread that plays, what gain brings a sequence to the level of all: at once by its first seconds,
 * and by the whole of it soon after it has begun to sound.
 */
final class LevelAhead implements AutoCloseable {
    private static final int FIRST_SECONDS = 3;
    private static final int MOST_SECONDS = 60;

    private final Sequence sequence;
    private final Optional<Bank> bank;
    private final int firstSeconds;
    private final CompletableFuture<Double> first = new CompletableFuture<>();
    private volatile double latest;
    private volatile boolean closed;

    private LevelAhead(Sequence sequence, Optional<Bank> bank, double countIn) {
        this.sequence = sequence;
        this.bank = bank;
        this.firstSeconds = FIRST_SECONDS + (int) Math.ceil(countIn);
    }

    /**
     * Begins to measure.
     *
     * @param countIn seconds until the music begins
     */
    static LevelAhead of(Sequence sequence, Optional<Bank> bank, double countIn) {
        LevelAhead ahead = new LevelAhead(sequence, bank, countIn);
        Thread thread = new Thread(ahead::run, "level");
        thread.setDaemon(true);
        thread.start();
        return ahead;
    }

    /** What goes wrong is told to whoever waits for the gain. */
    private void run() {
        try (Loudness loudness = new Loudness(sequence, bank)) {
            latest = LoudnessTarget.gain(loudness.through(firstSeconds));
            first.complete(latest);
            for (int seconds = firstSeconds; !closed && seconds < MOST_SECONDS; seconds += FIRST_SECONDS) {
                loudness.through(seconds);
            }
            latest = closed ? latest : LoudnessTarget.gain(loudness.through(MOST_SECONDS));
        } catch (IOException | RuntimeException | LinkageError failed) {
            first.completeExceptionally(failed);
        }
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
            throw new Failure(Phrase.of("was interrupted"), interrupted);
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof IOException known
                    ? known
                    : new IOException(failed.getCause().getMessage(), failed.getCause());
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
