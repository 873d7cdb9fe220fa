package monochord.harmony.voicing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * For each candidate of one chord the cheapest ways to reach it from the first chord on, in order, as many as are asked for.
 *
 * <p>The ways of all candidates stand in one row: those of candidate i begin at i × {@code most}.
 */
final class KeptWays {
    static final long NONE = Long.MAX_VALUE;

    private final int most;
    private final long[] costs;
    private final int[] origins;

    /** @param most how many for each candidate, at least one */
    KeptWays(int candidates, int most) {
        this.most = most;
        costs = new long[candidates * most];
        origins = new int[candidates * most];
        Arrays.fill(costs, NONE);
    }

    /** Puts a way among those of its candidate, in order; the dearest falls out. */
    void keep(int candidate, long cost, int origin) {
        int first = candidate * most;
        int place = first + most - 1;
        while (place > first && costs[place - 1] > cost) {
            costs[place] = costs[place - 1];
            origins[place] = origins[place - 1];
            place--;
        }
        costs[place] = cost;
        origins[place] = origin;
    }

    /** What the cheapest way to a candidate costs, or {@link #NONE}. */
    long cheapest(int candidate) {
        return costs[candidate * most];
    }

    /** What a new way to a candidate must cost less than, to be kept. */
    long dearest(int candidate) {
        return costs[candidate * most + most - 1];
    }

    /** Where the ways to a candidate begin in the row. */
    int first(int candidate) {
        return candidate * most;
    }

    int candidate(int way) {
        return way / most;
    }

    long cost(int way) {
        return costs[way];
    }

    /** The way to the chord before from which this one goes on. */
    int origin(int way) {
        return origins[way];
    }

    int[] candidatesCheapestFirst() {
        return IntStream.range(0, costs.length / most)
                .boxed()
                .sorted(Comparator.comparingLong(this::cheapest))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** The cheapest ways over all candidates, as many as are kept for each. */
    IntStream cheapestFirst() {
        return IntStream.range(0, costs.length)
                .filter(way -> costs[way] != NONE)
                .boxed()
                .sorted(Comparator.comparingLong(this::cost))
                .limit(most)
                .mapToInt(Integer::intValue);
    }
}
