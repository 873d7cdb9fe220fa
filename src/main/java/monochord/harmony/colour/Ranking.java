package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Puts ideas in order, the best first, each counting less where a better one has been told for the same chords or under
 * the same name: whoever reads three ideas wants three different ones.
 */
final class Ranking {
    private static final Comparator<Idea> BEST = Comparator.comparingInt(Idea::score)
            .thenComparing(idea -> idea.colour() == Colour.BORROWED)
            .thenComparing(Idea::first);

    private Ranking() {}

    static List<Idea> of(List<Idea> ideas) {
        List<Idea> left = new ArrayList<>(ideas);
        List<Idea> ranked = new ArrayList<>();
        while (!left.isEmpty()) {
            Idea best = left.stream().max(BEST).orElseThrow();
            left.remove(best);
            ranked.add(best);
            left.replaceAll(idea -> idea.scored(Math.min(idea.score(), idea.worth() - less(best, idea))));
        }
        return List.copyOf(ranked);
    }

    private static int less(Idea told, Idea idea) {
        Change one = told.change();
        Change other = idea.change();
        boolean same = one.changedFrom() == other.changedFrom() && one.changedTo() == other.changedTo();
        boolean touches = one.changedFrom() <= other.changedTo() && other.changedFrom() <= one.changedTo();
        return (same ? RecolourWeights.SAME_CHORDS : touches ? RecolourWeights.ALIKE : 0)
                + (told.name().equals(idea.name()) ? RecolourWeights.ALIKE : 0);
    }
}
