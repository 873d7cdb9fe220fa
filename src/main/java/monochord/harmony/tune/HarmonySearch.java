package monochord.harmony.tune;

import java.util.Arrays;
import java.util.List;
import monochord.harmony.key.ChordTable;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;

/**
 * Looks for the chords that are worth most under a tune, all ways through it compared: dynamic programming from both ends,
 * so that it is also known what the best way through each chord of each slot is worth. Linear in the number of slots.
 */
final class HarmonySearch {
    private static final double NEVER = Double.NEGATIVE_INFINITY;
    private static final double[] STAYS = {
        Math.log(TuneWeights.STAYS_WITHIN_BAR), Math.log(TuneWeights.STAYS_OVER_BAR_LINE)
    };
    private static final double[] CHANGES = {
        Math.log(1 - TuneWeights.STAYS_WITHIN_BAR), Math.log(1 - TuneWeights.STAYS_OVER_BAR_LINE)
    };

    private final List<TuneSlot> slots;
    private final List<PlainChords> plain;
    private final double[][] own;
    private final int[] numbers;
    private final double[][] next;
    private final boolean[] isRestful;
    private final int home;
    private final boolean endsAtHome;
    private final boolean[] isDominantSeventh;

    HarmonySearch(List<TuneSlot> slots, Key key, ChordTable table) {
        this.slots = slots;
        this.plain = PlainChords.of(key);
        int size = plain.size();
        this.own = new double[slots.size()][size];
        this.numbers = plain.stream()
                .mapToInt(one -> ChordTable.chord(one.chord(), key.tonic()))
                .toArray();
        this.next = new double[size][size];
        this.isRestful = new boolean[size];
        this.isDominantSeventh = new boolean[size];
        for (int i = 0; i < size; i++) {
            Chord chord = plain.get(i).chord();
            isRestful[i] = chord.root().equals(key.tonic()) || chord.root().equals(key.note(5));
            isDominantSeventh[i] =
                    chord.root().equals(key.note(5)) && chord.kind().equals(ChordKind.DOMINANT_SEVENTH);
            for (int j = 0; j < size; j++) {
                next[i][j] = table.next(key.isMinor(), numbers[i], numbers[j]);
            }
        }
        this.home = home(key);
        this.endsAtHome = endsOn(plain.get(home).chord());
        for (int t = 0; t < slots.size(); t++) {
            weigh(t);
        }
    }

    private int home(Key key) {
        for (int i = 0; i < plain.size(); i++) {
            if (plain.get(i).chord().root().equals(key.tonic()) && plain.get(i).note() == null) {
                return i;
            }
        }
        throw new IllegalStateException("no tonic chord in " + key);
    }

    private void weigh(int t) {
        TuneSlot slot = slots.get(t);
        for (int i = 0; i < plain.size(); i++) {
            own[t][i] = plain.get(i).isFor(slot)
                    ? TuneWeights.FIT * slot.fit(plain.get(i).chord()) * HarmonicMetre.wholeNotes(slot) - edge(t, i)
                    : NEVER;
        }
    }

    private boolean endsOn(Chord tonic) {
        List<TuneSlot.SlotNote> last = slots.get(slots.size() - 1).notes();
        return last.isEmpty() || tonic.holds(last.get(last.size() - 1).name());
    }

    /** What a chord costs at the end, where a phrase rests, and on the first full bar. */
    private double edge(int t, int i) {
        double rest = slots.get(t).isRest() && !isRestful[i] ? TuneWeights.ODD_REST : 0;
        boolean isEnd = t == slots.size() - 1;
        boolean isBeginning = slots.get(t).start() == 0;
        return rest
                + (isEnd && endsAtHome && i != home ? TuneWeights.OPEN_END : 0)
                + (isBeginning && numbers[i] != numbers[home] ? TuneWeights.ODD_BEGINNING : 0);
    }

    List<PlainChords> plain() {
        return plain;
    }

    /** What the chord itself is worth in the slot. */
    double own(int slot, int chord) {
        return own[slot][chord];
    }

    /** What it is worth that one chord comes after another as a slot begins. */
    double change(int slot, int from, int to) {
        int place = slots.get(slot).isAtBar() ? 1 : 0;
        return numbers[from] == numbers[to]
                ? STAYS[place]
                : CHANGES[place]
                        + next[from][to]
                        + (isDominantSeventh[from] && to == home ? TuneWeights.SEVENTH_BEFORE_HOME : 0);
    }

    /** What the best way through each chord of each slot is worth; minus infinity where the chord is not looked at. */
    double[][] totals() {
        double[][] before = forward();
        double[][] behind = backward();
        for (int t = 0; t < before.length; t++) {
            for (int i = 0; i < before[t].length; i++) {
                before[t][i] += behind[t][i];
            }
        }
        return before;
    }

    private double[][] forward() {
        double[][] best = new double[slots.size()][];
        best[0] = own[0].clone();
        for (int t = 1; t < best.length; t++) {
            best[t] = new double[plain.size()];
            Arrays.fill(best[t], NEVER);
            for (int to = 0; to < plain.size(); to++) {
                for (int from = 0; from < plain.size(); from++) {
                    best[t][to] = Math.max(best[t][to], best[t - 1][from] + change(t, from, to) + own[t][to]);
                }
            }
        }
        return best;
    }

    private double[][] backward() {
        double[][] best = new double[slots.size()][plain.size()];
        for (int t = best.length - 2; t >= 0; t--) {
            Arrays.fill(best[t], NEVER);
            for (int from = 0; from < plain.size(); from++) {
                for (int to = 0; to < plain.size(); to++) {
                    best[t][from] = Math.max(best[t][from], change(t + 1, from, to) + own[t + 1][to] + best[t + 1][to]);
                }
            }
        }
        return best;
    }

    /** The best way of all; of equal ones that with the chord that stands first among the plain ones. */
    int[] best() {
        double[][] behind = backward();
        int[] way = new int[slots.size()];
        way[0] = best(own[0], behind[0]);
        for (int t = 1; t < way.length; t++) {
            double[] here = new double[plain.size()];
            for (int i = 0; i < here.length; i++) {
                here[i] = change(t, way[t - 1], i) + own[t][i];
            }
            way[t] = best(here, behind[t]);
        }
        return way;
    }

    private static int best(double[] here, double[] behind) {
        int best = 0;
        for (int i = 1; i < here.length; i++) {
            if (here[i] + behind[i] > here[best] + behind[best]) {
                best = i;
            }
        }
        return best;
    }
}
