package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One chord for each place.
 *
 * @param score of the whole, by the formula of {@link Recolour}
 */
record Combination(List<ChordOption> chosen, int score) {
    /**
     * The combination of the highest score, found from left to right: for each chord in each place the best way to it. Of
     * equal ways the one with fewer changes to the left.
     *
     * @param bound how many chords may be tried in each place, the best ideas first; 0 for all
     */
    static Combination best(OptionTable canvas, int bound) {
        List<List<Integer>> allowed = IntStream.range(0, canvas.size())
                .mapToObj(at -> allowed(canvas, at, bound))
                .toList();
        List<int[]> from = new ArrayList<>();
        int[] reached = first(canvas, allowed.get(0));
        for (int at = 1; at < canvas.size(); at++) {
            int[] came = new int[allowed.get(at).size()];
            reached = step(canvas, at, allowed, reached, came);
            from.add(came);
        }
        return back(canvas, allowed, from, reached);
    }

    private static List<Integer> allowed(OptionTable canvas, int at, int bound) {
        int all = canvas.shades(at).size();
        if (bound == 0 || all <= bound + 1) {
            return IntStream.range(0, all).boxed().toList();
        }
        List<Integer> allowed = new ArrayList<>(List.of(0));
        IntStream.range(1, all)
                .boxed()
                .sorted(Comparator.comparingInt((Integer shade) -> canvas.gain(at, shade))
                        .reversed())
                .limit(bound)
                .forEach(allowed::add);
        return allowed;
    }

    private static int[] first(OptionTable canvas, List<Integer> allowed) {
        return allowed.stream().mapToInt(shade -> canvas.count(0, shade)).toArray();
    }

    /** @param came filled with the index, in the place before, of the best way to each chord */
    private static int[] step(OptionTable canvas, int at, List<List<Integer>> allowed, int[] before, int[] came) {
        List<Integer> olds = allowed.get(at - 1);
        int[] reached = new int[came.length];
        for (int i = 0; i < reached.length; i++) {
            ChordOption here = canvas.shades(at).get(allowed.get(at).get(i));
            int best = Integer.MIN_VALUE;
            for (int old = 0; old < before.length; old++) {
                int way = before[old]
                        + TransitionScore.score(canvas.shades(at - 1).get(olds.get(old)), here);
                if (way > best) {
                    best = way;
                    came[i] = old;
                }
            }
            reached[i] = best + canvas.count(at, allowed.get(at).get(i));
        }
        return reached;
    }

    private static Combination back(OptionTable canvas, List<List<Integer>> allowed, List<int[]> from, int[] reached) {
        int index = 0;
        for (int i = 1; i < reached.length; i++) {
            index = reached[i] > reached[index] ? i : index;
        }
        int score = reached[index];
        LinkedList<ChordOption> chosen = new LinkedList<>();
        for (int at = canvas.size() - 1; at >= 0; at--) {
            chosen.addFirst(canvas.shades(at).get(allowed.get(at).get(index)));
            index = at == 0 ? 0 : from.get(at - 1)[index];
        }
        return new Combination(List.copyOf(chosen), score);
    }
}
