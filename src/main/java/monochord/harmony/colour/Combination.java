package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedList;
import java.util.List;
import java.util.Map;

/**
 * Ideas that go together.
 *
 * @param ideas in order of place
 * @param score of the whole, by the formula of {@link Recolour}
 */
record Combination(List<Idea> ideas, int score) {
    /** A way that ends with one idea; {@code before} is null where it is the only one. */
    private record Way(Idea last, Way before, int score) {}

    /**
     * The combination of the highest score, found from left to right: for each idea the best way that ends with it. Of
     * equal ways the one with fewer ideas.
     */
    static Combination best(List<Idea> ideas, boolean bold) {
        List<Idea> inOrder = new ArrayList<>(ideas);
        inOrder.sort((one, other) ->
                Integer.compare(one.change().reachesTo(), other.change().reachesTo()));
        Ways ways = new Ways(bold);
        Way best = null;
        for (Idea idea : inOrder) {
            Way before = ways.bestBefore(idea);
            int alone = alone(idea, bold);
            int score = before == null ? alone : before.score + alone + together(before.last, idea, bold);
            boolean joins = before != null && score > alone;
            Way way = new Way(idea, joins ? before : null, joins ? score : alone);
            ways.add(way);
            best = way.score > (best == null ? 0 : best.score) ? way : best;
        }
        return of(best);
    }

    private static Combination of(Way best) {
        LinkedList<Idea> ideas = new LinkedList<>();
        for (Way way = best; way != null; way = way.before) {
            ideas.addFirst(way.last);
        }
        return new Combination(List.copyOf(ideas), best == null ? 0 : best.score);
    }

    static int alone(Idea idea, boolean bold) {
        return idea.worth() - (bold ? 0 : RecolourWeights.ONE_MORE);
    }

    /** Whether the chords that one leans on are left alone by the other. */
    static boolean goTogether(Idea one, Idea next) {
        return next.change().reachesFrom() >= one.change().reachesTo();
    }

    /** What two ideas next to each other in a combination count together: never more than nothing. */
    static int together(Idea one, Idea next, boolean bold) {
        int apart = next.change().changedFrom() - one.change().changedTo();
        int crowded = bold ? RecolourWeights.CROWDED_BOLDLY : RecolourWeights.CROWDED;
        return -(apart <= RecolourWeights.NEAR ? crowded : 0)
                - (one.name().equals(next.name()) ? RecolourWeights.AGAIN : 0);
    }

    /**
     * The ways found so far. Of those that end too far off to crowd, only the best for each idiom counts, so that the
     * work grows with the length of the row and no faster.
     */
    private static final class Ways {
        private static final int MOST_REPLACED = 4;

        private final boolean bold;
        private final LinkedList<Way> near = new LinkedList<>();
        private final Map<String, Way> far = new HashMap<>();

        Ways(boolean bold) {
            this.bold = bold;
        }

        void add(Way way) {
            near.add(way);
        }

        Way bestBefore(Idea idea) {
            int farBelow = idea.change().reachesTo() - MOST_REPLACED - RecolourWeights.NEAR;
            while (!near.isEmpty() && near.getFirst().last.change().changedTo() < farBelow) {
                Way way = near.removeFirst();
                far.merge(way.last.name(), way, (one, other) -> other.score > one.score ? other : one);
            }
            Way best = null;
            for (Way way : near) {
                best = goTogether(way.last, idea) ? better(best, way, idea) : best;
            }
            for (Way way : far.values()) {
                best = better(best, way, idea);
            }
            return best;
        }

        private Way better(Way best, Way way, Idea next) {
            return best == null || worth(way, next) > worth(best, next) ? way : best;
        }

        private int worth(Way way, Idea next) {
            return way.score + together(way.last, next, bold);
        }
    }
}
