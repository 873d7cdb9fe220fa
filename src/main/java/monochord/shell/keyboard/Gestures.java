package monochord.shell.keyboard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Follows the keys of a keyboard and tells what was meant by them.
 *
 * <p>A chord is what was down when the last of its keys went down, so a slip that is put right while the others are held does
 * no harm; it is over when every key is up. Keys that were never down together are a line, which is over after a pause,
 * sooner when it has come back to the note it began on. A key that stays down for very long while others move is taken for one
 * whose release was lost. The times are common practice, no source.
 */
final class Gestures {
    static final long STEADY_MILLIS = 80;
    static final long PAUSE_MILLIS = 1200;
    static final long PAUSE_AT_HOME_MILLIS = 500;
    static final long REST_MILLIS = 600;
    private static final long STUCK_MILLIS = 30_000;
    private static final int SHORTEST_SCALE = 6;

    private final Map<Integer, Long> down = new LinkedHashMap<>();
    private final List<Integer> pressed = new ArrayList<>();
    private final List<Integer> line = new ArrayList<>();
    private TreeSet<Integer> struck = new TreeSet<>();
    private Set<Integer> steady = Set.of();
    private Gesture finished;
    private boolean resting;
    private long changed;

    /** Keys that are down, bottom to top. */
    List<Integer> down() {
        return new ArrayList<>(new TreeSet<>(down.keySet()));
    }

    /** @param now milliseconds of any clock that only goes forward */
    void press(int key, long now) {
        down.values().removeIf(since -> now - since > STUCK_MILLIS);
        if (down.isEmpty()) {
            pressed.clear();
        }
        down.put(key, now);
        pressed.add(key);
        struck = new TreeSet<>(down.keySet());
        changed = now;
    }

    void release(int key, long now) {
        if (down.remove(key) == null) {
            return;
        }
        changed = now;
        if (down.values().stream().allMatch(since -> now - since > STUCK_MILLIS)) {
            letGo();
        }
    }

    void releaseAll(long now) {
        if (!down.isEmpty()) {
            changed = now;
            letGo();
        }
    }

    private void letGo() {
        down.clear();
        if (resting) {
            return;
        }
        if (line.isEmpty() && isChord()) {
            finished = new Gesture.KeysTogether(List.copyOf(struck));
        } else {
            line.addAll(isChord() ? struck : pressed);
        }
    }

    /** Whether the keys belonged together: hardly more went down than were down at last. */
    private boolean isChord() {
        Set<Integer> corrected = new LinkedHashSet<>(pressed);
        corrected.removeAll(struck);
        return struck.size() > 2 ? corrected.size() < struck.size() : struck.size() == 2 && corrected.isEmpty();
    }

    /** What has come to its end by now, told once. */
    Optional<Gesture> over(long now) {
        if (resting) {
            resting = !down.isEmpty() || now - changed < REST_MILLIS;
            return Optional.empty();
        }
        if (finished == null && !line.isEmpty() && down.isEmpty() && now - changed >= pause()) {
            finished = new Gesture.KeysInTurn(line);
            line.clear();
        }
        Optional<Gesture> told = Optional.ofNullable(finished);
        finished = null;
        return told;
    }

    private long pause() {
        int last = line.get(line.size() - 1);
        boolean home = line.size() >= SHORTEST_SCALE && (last - line.get(0)) % 12 == 0;
        return home ? PAUSE_AT_HOME_MILLIS : PAUSE_MILLIS;
    }

    /** The keys that have been down for a moment without change, told when they have become others. */
    Optional<Set<Integer>> steady(long now) {
        Set<Integer> held = down.keySet();
        if (now - changed < STEADY_MILLIS || held.equals(steady)) {
            return Optional.empty();
        }
        steady = new TreeSet<>(held);
        return Optional.of(steady);
    }

    /** Whether nothing is to come of what was played so far unless more is played. */
    boolean isQuiet() {
        return down.isEmpty() && line.isEmpty() && finished == null && !resting && steady.isEmpty();
    }

    /** Hears nothing more until the hands have left the keys for a moment. */
    void rest() {
        resting = true;
        line.clear();
        finished = null;
    }
}
