package monochord.harmony.voicing.cost;

/**
 * What it costs to go from a candidate of one chord to a candidate of the next, from tables made once for the two chords:
 * the same sum as {@link CostFormula#change}, quick enough to be asked of every pair.
 */
public final class TransitionCost {
    private final CandidateTable from;
    private final CandidateTable to;
    private final VoicingWeights weights;
    private final int voices;
    private final boolean hasBass;
    /** Half steps that no voice goes beyond. */
    private final int farthest;

    private final int width;
    /** For each place, tone and step what the voice pays for itself. */
    private final int[][] alone;

    private final int common;
    private final int[] pairsWithin;
    private final int outer;
    private final int leftHand;

    public TransitionCost(CandidateTable from, CandidateTable to, CostFormula formula) {
        this.from = from;
        this.to = to;
        this.voices = from.voices;
        this.weights = formula.texture().weights();
        this.hasBass = formula.texture().hasBass();
        this.farthest = farthest(from, to);
        this.width = 2 * farthest + 1;
        this.alone = tables(new VoiceMoveCost(from.chord, to.chord, formula.key()));
        this.common = common(from.chord, to.chord);
        this.pairsWithin = pairsWithin(voices);
        this.outer = CandidateTable.pair(0, voices - 1);
        this.leftHand = pairsWithin[(1 << Math.min(voices, formula.texture().leftHand())) - 1];
    }

    /** The tones of the first chord, as bits, that the second has too. */
    private static int common(ChordTones from, ChordTones to) {
        int both = from.keys() & to.keys();
        int common = 0;
        for (int tone = 0; tone < from.count(); tone++) {
            common |= (both >> from.name(tone).pitchClass() & 1) != 0 ? 1 << tone : 0;
        }
        return common;
    }

    private static int[] pairsWithin(int voices) {
        int[] pairs = new int[1 << voices];
        for (int set = 0; set < pairs.length; set++) {
            for (int upper = 1; upper < voices; upper++) {
                for (int lower = 0; lower < upper; lower++) {
                    boolean both = (set >> upper & set >> lower & 1) != 0;
                    pairs[set] |= both ? CandidateTable.pair(lower, upper) : 0;
                }
            }
        }
        return pairs;
    }

    private int[][] tables(VoiceMoveCost move) {
        VoiceMoveCost.VoicePlace[] places = VoiceMoveCost.VoicePlace.values();
        int[][] byPlace = new int[places.length][];
        for (VoiceMoveCost.VoicePlace place : places) {
            byPlace[place.ordinal()] = table(move, place);
        }
        int[][] byVoice = new int[voices][];
        for (int voice = 0; voice < voices; voice++) {
            byVoice[voice] = byPlace[CostFormula.place(voice, voices, hasBass).ordinal()];
        }
        return byVoice;
    }

    private static int farthest(CandidateTable from, CandidateTable to) {
        int farthest = 0;
        for (int voice = 0; voice < from.voices; voice++) {
            farthest = Math.max(farthest, to.highest[voice] - from.lowest[voice]);
            farthest = Math.max(farthest, from.highest[voice] - to.lowest[voice]);
        }
        return farthest;
    }

    private int[] table(VoiceMoveCost move, VoiceMoveCost.VoicePlace place) {
        int[] table = new int[from.chord.count() * width];
        for (int tone = 0; tone < from.chord.count(); tone++) {
            int key = from.chord.name(tone).pitchClass();
            for (int step = -farthest; step <= farthest; step++) {
                int next = to.chord.at(Math.floorMod(key + step, 12));
                table[tone * width + farthest + step] = next < 0 ? 0 : cost(move, place, tone, next, step);
            }
        }
        return table;
    }

    private int cost(VoiceMoveCost move, VoiceMoveCost.VoicePlace place, int tone, int next, int step) {
        return weights.motion() * VoiceMoveCost.motion(place, step)
                + weights.leap() * VoiceMoveCost.leap(place, step)
                + weights.line() * VoiceMoveCost.line(place, step)
                + (move.isUnresolved(place, tone, step) ? weights.unresolved() : 0)
                + (move.isAugmented(tone, next, step) ? weights.rough() : 0);
    }

    /**
     * @param a a candidate of the first chord, by its number in the table
     * @param b a candidate of the second
     */
    public int cost(int a, int b) {
        int[] before = from.keys;
        int[] after = to.keys;
        int first = a * voices;
        int second = b * voices;
        int sum = 0;
        int up = 0;
        int down = 0;
        int kept = 0;
        int overlaps = 0;
        int belowBefore = -1;
        int belowAfter = -1;
        for (int voice = 0; voice < voices; voice++) {
            int was = before[first + voice];
            int is = after[second + voice];
            int step = is - was;
            int tone = from.tones[first + voice];
            sum += alone[voice][tone * width + farthest + step];
            up |= step > 0 ? 1 << voice : 0;
            down |= step < 0 ? 1 << voice : 0;
            kept |= step == 0 ? 1 << tone : 0;
            overlaps += belowAfter > was || belowBefore > is ? 1 : 0;
            belowBefore = was;
            belowAfter = is;
        }
        boolean leap = VoiceMoveCost.isLeap(belowAfter - belowBefore);
        int lost = Integer.bitCount(common & ~kept);
        return sum + weights.lost() * lost + weights.rough() * overlaps + pairs(a, b, up, down, leap);
    }

    private int pairs(int a, int b, int up, int down, boolean leapOnTop) {
        int sameWay = pairsWithin[up] | pairsWithin[down];
        int alike = from.fifths[a] & to.fifths[b] | from.octaves[a] & to.octaves[b];
        int opened = from.narrow[a] & to.fifths[b] & sameWay;
        int hidden = leapOnTop ? (to.fifths[b] | to.octaves[b]) & ~alike & sameWay & outer : 0;
        int sum = weights.rough() * (Integer.bitCount(opened) + Integer.bitCount(hidden));
        return alike == 0 ? sum : sum + parallels(alike, sameWay, pairsWithin[up | down]);
    }

    private int parallels(int alike, int sameWay, int moving) {
        int parallel = alike & sameWay;
        return weights.parallel() * Integer.bitCount(parallel & ~leftHand)
                + weights.leftParallel() * Integer.bitCount(parallel & leftHand)
                + weights.contrary() * Integer.bitCount(alike & moving & ~sameWay);
    }
}
