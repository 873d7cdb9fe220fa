package monochord.sound;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import javax.sound.midi.Sequence;

/**
 * Plays behind the prompt: one thing at a time, the next replaces the last.
 *
 * <p>Every method returns at once. The synthesizer is opened with the first thing played, by the player's own thread, and
 * stays open; a device that could not be opened is tried again with the next. All threads are daemons, so a program that
 * ends does not wait for the music.
 */
public final class Player implements AutoCloseable {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(Player::daemon);
    private final AtomicReference<Playback> current = new AtomicReference<>();
    /** Made and used by the player's thread alone, so that nothing of javax.sound is loaded before it is needed. */
    private Instrument instrument;

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "sound");
        thread.setDaemon(true);
        return thread;
    }

    /** @throws java.util.concurrent.RejectedExecutionException if the player has been closed */
    public Playing play(Sequence sequence) {
        Playing playing = new Playing(new CompletableFuture<>(), new CompletableFuture<>());
        Playback next = new Playback(sequence, playing);
        replaceWith(next);
        thread.execute(() -> next.on(instrument()));
        return playing;
    }

    private Instrument instrument() {
        if (instrument == null) {
            instrument = new Instrument();
        }
        return instrument;
    }

    /** Silence, at once; nothing happens if nothing sounds. */
    public void stop() {
        replaceWith(null);
    }

    private void replaceWith(Playback next) {
        Playback last = current.getAndSet(next);
        if (last != null) {
            last.stop();
        }
    }

    /** Stops what sounds and lets go of the device. */
    @Override
    public void close() {
        stop();
        if (!thread.isShutdown()) {
            thread.execute(this::letGo);
            thread.shutdown();
        }
    }

    private void letGo() {
        if (instrument != null) {
            instrument.close();
        }
    }
}
