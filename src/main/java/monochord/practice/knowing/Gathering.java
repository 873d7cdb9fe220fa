package monochord.practice.knowing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Gathers evidence into knowledge, one piece at a time; for records too long to be held in memory at once. */
public final class Gathering {
    private final Map<Item, Standing> standings = new HashMap<>();
    private final Map<String, Pace> paces = new HashMap<>();
    private final List<Evidence> atOneTime = new ArrayList<>();
    private long time = Long.MIN_VALUE;

    /**
     * Adds what comes next; what has the same time may come in any order.
     *
     * @throws IllegalArgumentException if it is older than what came before
     */
    public void add(Evidence evidence) {
        if (evidence.time() < time) {
            throw new IllegalArgumentException("evidence of " + evidence.time() + " behind evidence of " + time);
        }
        if (evidence.time() > time) {
            weighAll();
            time = evidence.time();
        }
        atOneTime.add(evidence);
    }

    private void weighAll() {
        if (atOneTime.size() > 1) {
            Collections.sort(atOneTime);
        }
        atOneTime.forEach(this::weigh);
        atOneTime.clear();
    }

    private void weigh(Evidence evidence) {
        String skill = evidence.item().skill();
        Pace pace = paces.getOrDefault(skill, Pace.NONE);
        Rating rating = Rating.of(evidence, pace);
        Standing before = standings.get(evidence.item());
        standings.put(
                evidence.item(), before == null ? Standing.first(evidence, rating) : before.after(evidence, rating));
        paces.put(skill, pace.plus(evidence));
    }

    /** All that was added so far. */
    public Knowledge knowledge() {
        weighAll();
        return new Knowledge(new TreeMap<>(standings), paces);
    }
}
