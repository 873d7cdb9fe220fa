package monochord.harmony.voicing.cost;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import monochord.harmony.motion.PerfectInterval;

/**
 * The candidates of one chord side by side, laid out for speed: the keys and tones of all in one array, and the fifths
 * and octaves of each as bits, one for each pair of voices.
 */
public final class CandidateTable {
    final int voices;
    final int size;
    /** MIDI note numbers: those of candidate i begin at i × voices. */
    final int[] keys;

    final int[] tones;
    final int[] fifths;
    final int[] octaves;
    /** Pairs of a voice with the bass that are a diminished fifth apart. */
    final int[] narrow;

    /** Of each voice, over all candidates. */
    final int[] lowest;

    final int[] highest;
    final int[] cost;
    final int[] closing;
    final int[] drift;
    final ChordTones chord;

    /**
     * @param candidates as MIDI note numbers, bass first
     * @param drift what decides between candidates that cost the same; less is better
     */
    public CandidateTable(
            List<int[]> candidates, int voices, ChordTones chord, CostFormula weighing, ToIntFunction<int[]> drift) {
        this.voices = voices;
        size = candidates.size();
        this.chord = chord;
        keys = new int[size * voices];
        tones = new int[size * voices];
        fifths = new int[size];
        octaves = new int[size];
        narrow = new int[size];
        lowest = new int[voices];
        highest = new int[voices];
        Arrays.fill(lowest, Integer.MAX_VALUE);
        cost = new int[size];
        closing = new int[size];
        this.drift = new int[size];
        for (int i = 0; i < size; i++) {
            int[] candidate = candidates.get(i);
            System.arraycopy(candidate, 0, keys, i * voices, voices);
            for (int voice = 0; voice < voices; voice++) {
                tones[i * voices + voice] = chord.at(candidate[voice]);
                lowest[voice] = Math.min(lowest[voice], candidate[voice]);
                highest[voice] = Math.max(highest[voice], candidate[voice]);
            }
            pairs(i, candidate);
            cost[i] = weighing.alone(candidate, chord).total();
            closing[i] = weighing.closing(candidate).total();
            this.drift[i] = drift.applyAsInt(candidate);
        }
    }

    private void pairs(int i, int[] candidate) {
        for (int upper = 1; upper < voices; upper++) {
            for (int lower = 0; lower < upper; lower++) {
                PerfectInterval perfect = PerfectInterval.between(candidate[lower], candidate[upper]);
                fifths[i] |= perfect == PerfectInterval.FIFTH ? pair(lower, upper) : 0;
                octaves[i] |= perfect.isOctave() ? pair(lower, upper) : 0;
            }
            narrow[i] |= CostFormula.isDiminishedFifth(candidate, upper, chord) ? pair(0, upper) : 0;
        }
    }

    /** The bit of a pair of voices. */
    static int pair(int lower, int upper) {
        return 1 << upper * (upper - 1) / 2 + lower;
    }

    public int voices() {
        return voices;
    }

    /** How many candidates there are. */
    public int size() {
        return size;
    }

    public ChordTones chord() {
        return chord;
    }

    /** What the candidate costs by itself. */
    public int cost(int candidate) {
        return cost[candidate];
    }

    /** What the candidate costs besides as the last of a row. */
    public int closing(int candidate) {
        return closing[candidate];
    }

    public int drift(int candidate) {
        return drift[candidate];
    }

    /** MIDI note numbers, bass first. */
    public int[] keys(int candidate) {
        int[] copy = new int[voices];
        System.arraycopy(keys, candidate * voices, copy, 0, voices);
        return copy;
    }
}
