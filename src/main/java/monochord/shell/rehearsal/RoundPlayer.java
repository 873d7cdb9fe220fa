package monochord.shell.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.course.rehearsal.KeyPress;
import monochord.shell.playback.Ear;
import monochord.shell.playback.PlayheadPosition;
import monochord.sound.Performance;
import monochord.sound.keyboard.KeyEvent;
import monochord.sound.play.HeardClock;
import monochord.theory.note.Beats;

/**
 * Plays one round at a time on a thread of its own, and gathers what is played with it. Where nothing sounds, it counts by
 * the machine's clock. Thread-safe.
 */
public final class RoundPlayer {
    private static final long BETWEEN_LOOKS_MILLIS = 10;
    private static final double MILLIS_PER_MINUTE = 60_000;

    private final Ear ear;
    private final KeyFeed keys;
    private final LongSupplier nanos;
    private volatile RunningRound current;

    /** What somebody wants to know of a round. */
    public interface Listener {
        /** Nothing sounds: the count goes on by itself. */
        void isSilent();

        /** @param beats quarters from the first full bar, below 0 while it is counted in */
        void comesTo(double beats);

        /** It was played to its end; these keys were heard. */
        void isOver(List<KeyPress> presses);
    }

    public RoundPlayer(Ear ear, KeyFeed keys) {
        this(ear, keys, System::nanoTime);
    }

    /** @param nanos of a clock that only goes forward */
    RoundPlayer(Ear ear, KeyFeed keys, LongSupplier nanos) {
        this.ear = ear;
        this.keys = keys;
        this.nanos = nanos;
    }

    public boolean isRunning() {
        return current != null;
    }

    /** Begins to play a round, in place of one that runs. */
    public synchronized void play(Performance performance, Listener listener) {
        stop();
        RunningRound run = new RunningRound(performance, listener);
        current = run;
        keys.listen(run::hears);
        Thread thread = new Thread(run::run, "rehearsal");
        thread.setDaemon(true);
        thread.start();
    }

    /** Breaks the round off; its listener hears no more. */
    public synchronized void stop() {
        if (current != null) {
            current = null;
            keys.listen(null);
            ear.stop();
        }
    }

    private synchronized boolean ends(RunningRound run) {
        boolean wasRunning = current == run;
        if (wasRunning) {
            current = null;
            keys.listen(null);
        }
        return wasRunning;
    }

    private record TimedKeyEvent(KeyEvent stroke, long at) {}

    private final class RunningRound {
        private final Performance performance;
        private final Listener listener;
        private final HeardClock clock = new HeardClock();
        private final List<TimedKeyEvent> strokes = new ArrayList<>();
        private boolean sounds;
        private long begun;

        RunningRound(Performance performance, Listener listener) {
            this.performance = performance;
            this.listener = listener;
        }

        synchronized void hears(KeyEvent stroke, long at) {
            strokes.add(new TimedKeyEvent(stroke, at));
        }

        void run() {
            try {
                ear.playUnseen(performance);
                begun = nanos.getAsLong();
                sounds = ear.silence().isEmpty() && ear.playing().isPresent();
                if (!sounds) {
                    listener.isSilent();
                }
                double end = quarters(performance.score().beats()) - quarters(pickup());
                double now = goesOn();
                while (now < end) {
                    listener.comesTo(now);
                    Thread.sleep(BETWEEN_LOOKS_MILLIS);
                    now = goesOn();
                }
                if (ends(this)) {
                    listener.isOver(presses());
                }
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
                ends(this);
            } catch (RuntimeException closed) {
                ends(this); // the window is gone, or a fault of ours: the line goes on
            }
        }

        private Beats pickup() {
            return performance.metre().pickup();
        }

        /**
         * Where it is now, in quarters from the first full bar.
         *
         * @throws InterruptedException if it is to go on no longer
         */
        private double goesOn() throws InterruptedException {
            Optional<PlayheadPosition> heard = sounds ? ear.playing() : Optional.empty();
            long now = nanos.getAsLong(); // after the card's place: a pause between makes the look late, never early
            if (current != this || sounds && heard.isEmpty()) {
                throw new InterruptedException("it was stopped");
            }
            heard.ifPresent(place -> clock.look(now, performance.secondsAt(place.beats())));
            return beatsAt(now);
        }

        private double beatsAt(long at) {
            double seconds = sounds ? clock.secondsAt(at) : (at - begun) / 1e9;
            return performance.beatsAfter(seconds) - quarters(pickup());
        }

        /** Each key with the time at which it went down and up. */
        private synchronized List<KeyPress> presses() {
            List<KeyPress> presses = new ArrayList<>();
            for (int i = 0; i < strokes.size(); i++) {
                if (strokes.get(i).stroke() instanceof KeyEvent.Down down) {
                    presses.add(new KeyPress(down.key(), millis(strokes.get(i).at()), up(down.key(), i)));
                }
            }
            return presses;
        }

        private double up(int key, int from) {
            for (int i = from + 1; i < strokes.size(); i++) {
                KeyEvent stroke = strokes.get(i).stroke();
                boolean isUp = stroke instanceof KeyEvent.Up up && up.key() == key || stroke instanceof KeyEvent.AllUp;
                if (isUp) {
                    return millis(strokes.get(i).at());
                }
            }
            return Double.POSITIVE_INFINITY;
        }

        private double millis(long at) {
            return beatsAt(at) * MILLIS_PER_MINUTE / performance.tempo();
        }
    }

    private static double quarters(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }
}
