package monochord.practice.mastery;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Gathers evidence into knowledge, one piece at a time; for records too long to be held in memory at once. */
public final class KnowledgeBuilder {
    private final Map<SkillInKey, EvidenceSoFar> places = new HashMap<>();
    private final Map<String, Going> goings = new HashMap<>();
    private final List<Evidence> atOneTime = new ArrayList<>();
    private long time = Long.MIN_VALUE;

    /** The pace in a skill so far. */
    private static final class Going {
        private Pace pace = Pace.NONE;
    }

    /** How it stands with one thing so far. */
    private static final class EvidenceSoFar {
        private final Going going;
        private SkillMastery standing;

        EvidenceSoFar(Going going) {
            this.going = going;
        }
    }

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
        EvidenceSoFar place = places.computeIfAbsent(evidence.item(), this::place);
        Rating rating = Rating.of(evidence, place.going.pace);
        place.standing =
                place.standing == null ? SkillMastery.first(evidence, rating) : place.standing.after(evidence, rating);
        place.going.pace = place.going.pace.plus(evidence);
    }

    private EvidenceSoFar place(SkillInKey item) {
        return new EvidenceSoFar(goings.computeIfAbsent(item.skill(), skill -> new Going()));
    }

    /** All that was added so far. */
    public Knowledge knowledge() {
        weighAll();
        SortedMap<SkillInKey, SkillMastery> standings = new TreeMap<>();
        places.forEach((item, place) -> standings.put(item, place.standing));
        Map<String, Pace> paces = new HashMap<>();
        goings.forEach((skill, going) -> paces.put(skill, going.pace));
        return new Knowledge(standings, paces);
    }
}
