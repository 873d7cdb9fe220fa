package monochord.sound.play;

import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import javax.sound.midi.Sequence;
import monochord.sound.Performance;

/**
 * Plays behind the prompt: one thing at a time, the next replaces the last.
 *
 * <p>Every method returns at once. The sound output is opened by the player's own thread for each thing played and let
 * go when it is over, so that one that was busy or missing is tried again with the next. All threads are daemons, so a
 * program that ends does not wait for the music.
 */
public final class Player implements AutoCloseable {
    private final ExecutorService thread = Executors.newSingleThreadExecutor(Player::daemon);
    private final AtomicReference<Playback> current = new AtomicReference<>();

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "sound");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Where clicks go on below the music, its level is that of the music without them.
     *
     * @throws java.util.concurrent.RejectedExecutionException if the player has been closed
     */
    public Playing play(Performance performance) {
        double countIn = performance.seconds() - performance.countedIn(false).seconds();
        if (!performance.clicked()) {
            return play(new Playback(performance.sequence(), performance.bank(), countIn));
        }
        return play(new Playback(performance.sequence(), music(performance).sequence(), performance.bank(), 0));
    }

    /** Without its clicks; where nothing else sounds, a chord stands for it, so that the clicks stay as soft as they are. */
    private static Performance music(Performance performance) {
        return performance.score().soundings().isEmpty()
                ? Performance.of(WarmUp.CHORD)
                : performance.clicked(false).countedIn(false);
    }

    /** @throws java.util.concurrent.RejectedExecutionException if the player has been closed */
    public Playing play(Sequence sequence) {
        return play(new Playback(sequence, Optional.empty(), 0));
    }

    private Playing play(Playback next) {
        replaceWith(next);
        thread.execute(next);
        return next.playing();
    }

    /** Silence, at once; nothing happens if nothing sounds. */
    public void stop() {
        replaceWith(null);
    }

    /**
     * Makes the synthesizer ready, unless this machine has no card; so that the first thing played begins as soon as any.
     * Nothing is heard of it.
     */
    public void warm() {
        thread.execute(new WarmUp());
    }

    private void replaceWith(Playback next) {
        Playback last = current.getAndSet(next);
        if (last != null) {
            last.stop();
        }
    }

    /** Stops what sounds, for good. */
    @Override
    public void close() {
        stop();
        thread.shutdown();
    }
}
