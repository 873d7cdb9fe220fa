package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.Arrays;
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

    private record ChordUnderTop(Chord chord, Optional<Pitch> top) {}

    private final VoicingTask task;
    private final int most;
    private final int voices;
    private final CostFormula weighing;
    private final List<CandidateTable> columns;
    /** Of each chord up to the one that the search has come to. */
    private final List<KeptWays> reached = new ArrayList<>();

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
        Map<ChordUnderTop, CandidateTable> known = new HashMap<>();
        List<CandidateTable> columns = new ArrayList<>();
        for (int i = 0; i < task.chords().size(); i++) {
            int index = i;
            CandidateTable column = known.computeIfAbsent(
                    new ChordUnderTop(task.chords().get(i), task.tops().get(i)),
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
        KeptWays beginnings = new KeptWays(first.size(), most);
        for (int i = 0; i < first.size(); i++) {
            if (top.isEmpty() || top.getAsInt() == first.chord().at(first.keys(i)[voices - 1])) {
                beginnings.keep(i, alone(0, i), 0);
            }
        }
        reached.clear();
        reached.add(beginnings);
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
        CandidateTable to = columns.get(index);
        TransitionCost change = new TransitionCost(columns.get(index - 1), to, weighing);
        int[] order = reached.get(index - 1).candidatesCheapestFirst();
        KeptWays next = new KeptWays(to.size(), most);
        for (int b = 0; b < to.size(); b++) {
            reach(b, alone(index, b), order, change, next);
        }
        reached.add(next);
    }

    /** @param order the candidates of the chord before, the cheapest to reach first */
    private void reach(int b, long alone, int[] order, TransitionCost transition, KeptWays next) {
        KeptWays from = reached.get(reached.size() - 1);
        for (int a : order) {
            long before = from.cheapest(a);
            long dearest = next.dearest(b);
            if (before == KeptWays.NONE || dearest != KeptWays.NONE && before + alone >= dearest) {
                return;
            }
            long change = ((long) transition.cost(a, b) << DRIFT_BITS) + alone;
            int first = from.first(a);
            for (int way = first; way < first + most && from.cost(way) != KeptWays.NONE; way++) {
                if (from.cost(way) + change >= next.dearest(b)) {
                    break;
                }
                next.keep(b, from.cost(way) + change, way);
            }
        }
    }

    private Stream<VoicedProgression> ways() {
        return reached.get(reached.size() - 1).cheapestFirst().mapToObj(this::way);
    }

    private VoicedProgression way(int last) {
        Layout layout = new Layout(task.style(), voices, task.reach());
        List<int[]> rows = new ArrayList<>();
        Voicing[] voicings = new Voicing[columns.size()];
        int way = last;
        for (int i = columns.size() - 1; i >= 0; i--) {
            int[] keys = columns.get(i).keys(reached.get(i).candidate(way));
            rows.add(0, keys);
            voicings[i] = voicing(keys, columns.get(i).chord(), layout.leftHand(keys));
            way = reached.get(i).origin(way);
        }
        return new VoicedProgression(task, List.of(voicings), weighing.whole(rows));
    }

    private static Voicing voicing(int[] keys, ChordTones chord, int left) {
        List<Pitch> pitches = Arrays.stream(keys).mapToObj(chord::pitch).toList();
        return new Voicing(pitches.subList(0, left), pitches.subList(left, pitches.size()));
    }
}
