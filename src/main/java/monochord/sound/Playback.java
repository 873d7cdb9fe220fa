package monochord.sound;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sound.midi.Sequence;

/** One sequence being played on the player's thread, until its end or until it is stopped from another thread. */
final class Playback {
    /** How long the last notes may ring, in microseconds. */
    private static final long TAIL = 1_500_000;

    private final Sequence sequence;
    private final Playing playing;
    private final CountDownLatch stopped = new CountDownLatch(1);

    Playback(Sequence sequence, Playing playing) {
        this.sequence = sequence;
        this.playing = playing;
    }

    void stop() {
        stopped.countDown();
    }

    /** Plays; what goes wrong is told by the outcome, for there is nobody on this thread to tell it to. */
    void on(Instrument instrument) {
        try {
            perform(instrument);
        } catch (RuntimeException broken) {
            playing.started().complete(Outcome.BROKEN);
            instrument.close();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        } finally {
            playing.started().complete(Outcome.STOPPED);
            playing.ended().complete(null);
        }
    }

    private void perform(Instrument instrument) throws InterruptedException {
        if (stopped.getCount() == 0) {
            return;
        }
        Outcome outcome = instrument.open();
        if (stopped.getCount() > 0) {
            playing.started().complete(outcome);
        }
        if (outcome == Outcome.SOUNDING) {
            playThrough(instrument);
        }
    }

    private void playThrough(Instrument instrument) throws InterruptedException {
        long start = System.nanoTime();
        Schedule schedule = Schedule.of(sequence);
        try {
            for (Schedule.Due due : schedule.messages()) {
                if (stoppedBefore(start, due.microseconds())) {
                    return;
                }
                instrument.send(due.message());
            }
            stoppedBefore(start, schedule.end() + TAIL);
        } finally {
            instrument.silence();
        }
    }

    private boolean stoppedBefore(long start, long microseconds) throws InterruptedException {
        long left = start + TimeUnit.MICROSECONDS.toNanos(microseconds) - System.nanoTime();
        return stopped.await(Math.max(0, left), TimeUnit.NANOSECONDS);
    }
}
