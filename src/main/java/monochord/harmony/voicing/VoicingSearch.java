package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.harmony.voicing.cost.CandidateTable;
import monochord.harmony.voicing.cost.ChordTones;
import monochord.harmony.voicing.cost.CostFormula;
import monochord.harmony.voicing.cost.TransitionCost;
import monochord.theory.Chord;
import monochord.theory.note.Pitch;

/**
 * Finds the cheapest ways to play a task: exact, by dynamic programming over all candidates of all chords.
 *
 * <p>For each candidate of a chord the cheapest ways to reach it are kept, as many as are asked for; a longer way through
 * a candidate is cheapest only if its beginning is. Candidates of the chord before are tried from the cheapest on, and
 * given up when one has already cost as much as the dearest way that is kept: a change never costs less than nothing, so
 * none of those behind it can be better. The table holds one number for each candidate and kept way; time grows with the
 * number of chords, and nothing else does.
 */
public final class VoicingSearch {
    /** Behind the cost the drift is counted, so that it decides only between equal costs. */
    private static final int DRIFT_BITS = 24;

    private static final long NONE = Long.MAX_VALUE;

    private record Place(Chord chord, Optional<Pitch> top) {}

    private final VoicingTask task;
    private final int most;
    private final int voices;
    private final CostFormula weighing;
    private final List<CandidateTable> columns;
    private final List<int[]> origins = new ArrayList<>();
    private long[] reached;

    private VoicingSearch(VoicingTask task, int most, List<CandidateTable> columns) {
        this.voices = columns.get(0).voices();
        this.weighing = task.formula(voices);
        this.task = task;
        this.most = most;
        this.columns = columns;
    }

    /**
     * The cheapest ways, the best first; fewer if there are not so many.
     *
     * @param most how many, at least one
     * @throws Unvoiced if a chord cannot be played in this style within this reach
     */
    public static List<VoicedProgression> best(VoicingTask task, int most) {
        return inTurn(task, most).toList();
    }

    /**
     * The same, each worked out in full only when its turn comes.
     *
     * @param most how many, at least one
     * @throws Unvoiced if a chord cannot be played in this style within this reach
     */
    public static Stream<VoicedProgression> inTurn(VoicingTask task, int most) {
        if (most < 1) {
            throw new IllegalArgumentException("at least one way must be asked for, not " + most);
        }
        VoicingSearch search = new VoicingSearch(task, most, columns(task));
        search.run(OptionalInt.empty());
        return search.ways();
    }

    /**
     * For each tone that can lie on top of the first chord the cheapest way to play the whole, in the order of the tones.
     *
     * @throws Unvoiced if a chord cannot be played in this style within this reach
     */
    static List<VoicedProgression> bestOfEachTop(VoicingTask task) {
        VoicingSearch search = new VoicingSearch(task, 1, columns(task));
        List<VoicedProgression> best = new ArrayList<>();
        for (int tone = 0; tone < search.columns.get(0).chord().count(); tone++) {
            search.run(OptionalInt.of(tone));
            search.ways().forEach(best::add);
        }
        return best;
    }

    /** @throws Unvoiced if a chord cannot be played in this style within this reach */
    public static VoicedProgression best(VoicingTask task) {
        return best(task, 1).get(0);
    }

    private static List<CandidateTable> columns(VoicingTask task) {
        int usual = task.usualVoices();
        int stuck = columns(task, usual).size();
        return IntStream.concat(
                        IntStream.rangeClosed(usual, task.style().most()),
                        IntStream.iterate(usual - 1, voices -> voices >= Layout.fewestVoices(task.style()), v -> v - 1))
                .mapToObj(voices -> columns(task, voices))
                .filter(columns -> columns.size() == task.chords().size())
                .findFirst()
                .orElseThrow(() -> new Unvoiced(task, stuck));
    }

    /** As many as have candidates, up to the first that has none. */
    private static List<CandidateTable> columns(VoicingTask task, int voices) {
        Layout layout = new Layout(task.style(), voices, task.reach());
        CostFormula weighing = task.formula(voices);
        Map<Place, CandidateTable> known = new HashMap<>();
        List<CandidateTable> columns = new ArrayList<>();
        for (int i = 0; i < task.chords().size(); i++) {
            int index = i;
            CandidateTable column = known.computeIfAbsent(
                    new Place(task.chords().get(i), task.tops().get(i)),
                    place -> new CandidateTable(
                            Candidates.of(task, index, voices),
                            voices,
                            task.tones(index, voices),
                            weighing,
                            layout::drift));
            if (column.size() == 0) {
                return columns;
            }
            columns.add(column);
        }
        return columns;
    }

    /** @param top the tone that lies on top of the first chord, or any */
    private void run(OptionalInt top) {
        CandidateTable first = columns.get(0);
        origins.clear();
        reached = new long[first.size() * most];
        Arrays.fill(reached, NONE);
        for (int i = 0; i < first.size(); i++) {
            if (top.isEmpty() || top.getAsInt() == first.chord().at(first.keys(i)[voices - 1])) {
                reached[i * most] = alone(0, i);
            }
        }
        for (int i = 1; i < columns.size(); i++) {
            goOn(i);
        }
    }

    private long alone(int index, int candidate) {
        CandidateTable column = columns.get(index);
        boolean last = index == columns.size() - 1;
        long cost = column.cost(candidate) + (last ? column.closing(candidate) : 0);
        return (cost << DRIFT_BITS) + column.drift(candidate);
    }

    private void goOn(int index) {
        CandidateTable from = columns.get(index - 1);
        CandidateTable to = columns.get(index);
        TransitionCost crossing = new TransitionCost(from, to, weighing);
        int[] order = cheapestFirst(from.size());
        long[] next = new long[to.size() * most];
        int[] origin = new int[to.size() * most];
        Arrays.fill(next, NONE);
        for (int b = 0; b < to.size(); b++) {
            reach(b, order, crossing, alone(index, b), next, origin);
        }
        reached = next;
        origins.add(origin);
    }

    private int[] cheapestFirst(int size) {
        return IntStream.range(0, size)
                .boxed()
                .sorted(Comparator.comparingLong(candidate -> reached[candidate * most]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private void reach(int b, int[] order, TransitionCost crossing, long alone, long[] next, int[] origin) {
        int dearest = b * most + most - 1;
        for (int a : order) {
            long before = reached[a * most];
            if (before == NONE || next[dearest] != NONE && before + alone >= next[dearest]) {
                return;
            }
            long change = ((long) crossing.cost(a, b) << DRIFT_BITS) + alone;
            for (int way = a * most; way < a * most + most && reached[way] != NONE; way++) {
                if (reached[way] + change >= next[dearest]) {
                    break;
                }
                keep(reached[way] + change, way, b * most, next, origin);
            }
        }
    }

    /** Puts a way among the kept ones of its candidate, in order; the dearest falls out. */
    private void keep(long cost, int way, int first, long[] next, int[] origin) {
        int place = first + most - 1;
        while (place > first && next[place - 1] > cost) {
            next[place] = next[place - 1];
            origin[place] = origin[place - 1];
            place--;
        }
        next[place] = cost;
        origin[place] = way;
    }

    private Stream<VoicedProgression> ways() {
        return IntStream.range(0, reached.length)
                .filter(way -> reached[way] != NONE)
                .boxed()
                .sorted(Comparator.comparingLong(way -> reached[way]))
                .limit(most)
                .map(this::way);
    }

    private VoicedProgression way(int last) {
        Layout layout = new Layout(task.style(), voices, task.reach());
        List<int[]> rows = new ArrayList<>();
        Voicing[] voicings = new Voicing[columns.size()];
        int way = last;
        for (int i = columns.size() - 1; i >= 0; i--) {
            int[] keys = columns.get(i).keys(way / most);
            rows.add(0, keys);
            voicings[i] = voicing(keys, columns.get(i).chord(), layout.leftHand(keys));
            way = i == 0 ? 0 : origins.get(i - 1)[way];
        }
        return new VoicedProgression(task, List.of(voicings), weighing.whole(rows));
    }

    private static Voicing voicing(int[] keys, ChordTones chord, int left) {
        List<Pitch> pitches = Arrays.stream(keys).mapToObj(chord::pitch).toList();
        return new Voicing(pitches.subList(0, left), pitches.subList(left, pitches.size()));
    }
}
