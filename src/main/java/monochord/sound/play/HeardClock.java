package monochord.sound.play;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * At which moment of this machine's clock which moment of a sound is heard. A card tells its place in steps, and late; of
 * many looks the one that says most is right, and old ones are forgotten, for a card's clock drifts. Thread-safe.
 */
public final class HeardClock {
    private static final long MEMORY_NANOS = 4_000_000_000L;
    private static final double NANOS = 1e9;

    private record ClockLook(long at, double begun) {}

    private final Deque<ClockLook> looks = new ArrayDeque<>();

    /**
     * Takes a look.
     *
     * @param nanos of the machine's clock, read after the place in the sound
     * @param seconds of the sound that have been heard by then
     */
    public synchronized void look(long nanos, double seconds) {
        if (seconds <= 0) {
            return; // it has not begun
        }
        double begun = nanos - seconds * NANOS;
        looks.removeIf(old -> nanos - old.at() > MEMORY_NANOS);
        looks.add(new ClockLook(nanos, begun));
    }

    /** Whether there has been a look. */
    public synchronized boolean runs() {
        return !looks.isEmpty();
    }

    /** Seconds of the sound that are heard at that moment; below 0 before it began. */
    public synchronized double secondsAt(long nanos) {
        double begun = looks.stream().mapToDouble(ClockLook::begun).min().orElse(nanos);
        return (nanos - begun) / NANOS;
    }
}
