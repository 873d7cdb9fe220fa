package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Puts ideas in order, the best first, each counting less where a better one has been told for the same chords or under
 * the same name: whoever reads three ideas wants three different ones.
 */
final class Ranking {
    private static final Comparator<Idea> BEST_FIRST = Comparator.comparingInt(Idea::score)
            .thenComparing(idea -> idea.colour() == Colour.BORROWED)
            .thenComparing(Idea::first)
            .reversed();

    private final Map<Integer, List<Change>> toldAt = new HashMap<>();
    private final Set<String> toldNames = new HashSet<>();
    private final List<Idea> ranked = new ArrayList<>();

    private Ranking() {}

    static List<Idea> of(List<Idea> ideas) {
        Ranking ranking = new Ranking();
        ranking.rank(ideas);
        return List.copyOf(ranking.ranked);
    }

    /** An idea that has come to count less since it was queued goes back. */
    private void rank(List<Idea> ideas) {
        PriorityQueue<Idea> left = new PriorityQueue<>(BEST_FIRST);
        left.addAll(ideas);
        while (!left.isEmpty()) {
            Idea best = left.poll();
            int now = best.worth() - less(best);
            if (now < best.score()) {
                left.add(best.scored(now));
            } else {
                tell(best);
            }
        }
    }

    private void tell(Idea idea) {
        ranked.add(idea);
        toldNames.add(idea.name());
        Change change = idea.change();
        for (int at = change.changedFrom(); at <= change.changedTo(); at++) {
            toldAt.computeIfAbsent(at, any -> new ArrayList<>()).add(change);
        }
    }

    private int less(Idea idea) {
        int less = 0;
        Change change = idea.change();
        for (int at = change.changedFrom(); at <= change.changedTo(); at++) {
            for (Change told : toldAt.getOrDefault(at, List.of())) {
                boolean same = told.changedFrom() == change.changedFrom() && told.changedTo() == change.changedTo();
                less = Math.max(less, same ? RecolourWeights.SAME_CHORDS : RecolourWeights.ALIKE);
            }
        }
        return less + (toldNames.contains(idea.name()) ? RecolourWeights.ALIKE : 0);
    }
}
