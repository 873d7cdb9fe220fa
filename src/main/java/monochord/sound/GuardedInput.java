package monochord.sound;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import monochord.text.Failure;
import monochord.text.Phrase;

/**
 * Work on a file that nobody can vouch for, such as a sound bank: on a thread of its own that may be given up. Whatever
 * it throws, running out of memory or of stack included, comes back as an IOException, and so does taking too long.
 */
final class GuardedInput extends InputStream {
    private static final long PATIENCE_SECONDS = 10;

    private final InputStream sound;
    private final ExecutorService thread = thread();

    GuardedInput(InputStream sound) {
        this.sound = sound;
    }

    private static ExecutorService thread() {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(work, "bank");
            thread.setDaemon(true);
            thread.setPriority(Thread.MIN_PRIORITY);
            return thread;
        });
    }

    /** @throws IOException if the work fails in any way, or is not done after {@value #PATIENCE_SECONDS} seconds */
    static <T> T once(Callable<T> work) throws IOException {
        ExecutorService thread = thread();
        try {
            return on(thread, work);
        } finally {
            thread.shutdownNow();
        }
    }

    private static <T> T on(ExecutorService thread, Callable<T> work) throws IOException {
        try {
            return thread.submit(work).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException late) {
            throw new Failure(Phrase.of("takes longer than {0} seconds", (int) PATIENCE_SECONDS), late);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new Failure(Phrase.of("was interrupted"), interrupted);
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof IOException known
                    ? known
                    : new Failure(Phrase.of("breaks off in the middle"), failed.getCause());
        }
    }

    @Override
    public int read() throws IOException {
        return on(thread, sound::read);
    }

    @Override
    public int read(byte[] piece, int from, int length) throws IOException {
        return on(thread, () -> sound.read(piece, from, length));
    }

    @Override
    public void close() {
        thread.submit(() -> {
            sound.close();
            return null;
        });
        thread.shutdown();
    }
}
