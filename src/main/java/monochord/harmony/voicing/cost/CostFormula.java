package monochord.harmony.voicing.cost;

import java.util.List;
import java.util.stream.IntStream;
import monochord.harmony.motion.PerfectInterval;
import monochord.harmony.voicing.cost.VoiceMoveCost.VoicePlace;
import monochord.theory.Key;

/**
 * Weighs voicings part by part, as {@link Cost} says it: the formula in its plainest form. {@link TransitionCost} counts the
 * same in a quicker way.
 *
 * <p>A voicing is its keys as MIDI note numbers, bass first, as many in each chord.
 */
public final class CostFormula {
    private static final int TRITONE = 6;
    private static final int DIMINISHED_FIFTH = -6;

    private final List<ChordTones> chords;
    private final Key key;
    private final Texture texture;
    private final VoicingWeights weights;
    private final int voices;

    /**
     * @param chords those that the voicings are of, in their order
     * @param voices in each voicing
     */
    public CostFormula(List<ChordTones> chords, Key key, Texture texture, int voices) {
        this.chords = List.copyOf(chords);
        this.key = key;
        this.texture = texture;
        this.weights = texture.weights();
        this.voices = voices;
    }

    Key key() {
        return key;
    }

    Texture texture() {
        return texture;
    }

    /** @param rows one voicing for each chord */
    public Cost whole(List<int[]> rows) {
        Cost cost = closing(rows.get(rows.size() - 1));
        for (int i = 0; i < rows.size(); i++) {
            cost = cost.plus(alone(i, rows.get(i)));
            cost = i == 0 ? cost : cost.plus(change(i - 1, rows.get(i - 1), rows.get(i)));
        }
        return cost;
    }

    /** What one chord costs by itself. */
    public Cost alone(int index, int[] keys) {
        return alone(keys, chords.get(index));
    }

    Cost alone(int[] keys, ChordTones tones) {
        return new Cost(
                0,
                0,
                0,
                0,
                0,
                0,
                weights.mud() * mud(keys),
                weights.thick() * thickness(keys, tones),
                weights.register() * texture.comfort().outside(keys),
                weights.spacing() * (gap(keys) + seconds(keys)));
    }

    /** What the last chord costs besides, for a bass that does not come to rest low. */
    public Cost closing(int[] keys) {
        int tooHigh = texture.hasBass() ? texture.comfort().tooHighToClose(keys) : 0;
        return new Cost(0, 0, 0, 0, 0, 0, 0, 0, 2 * weights.register() * tooHigh, 0);
    }

    private int gap(int[] keys) {
        int left = texture.leftHand();
        return left == 0 || left >= keys.length ? 0 : Math.max(0, keys[left] - keys[left - 1] - texture.freeGap());
    }

    /** Units for seconds: a half step between neighbours anywhere, more at the top, and a whole step at the top. */
    private static int seconds(int[] keys) {
        int units = 0;
        for (int voice = 1; voice < keys.length; voice++) {
            boolean top = voice == keys.length - 1;
            int interval = keys[voice] - keys[voice - 1];
            units += interval == 1 ? top ? 4 : 2 : interval == 2 && top ? 2 : 0;
        }
        return units;
    }

    static int mud(int[] keys) {
        int mud = 0;
        for (int upper = 1; upper < keys.length; upper++) {
            for (int lower = 0; lower < upper; lower++) {
                mud += Math.max(
                        0, Cost.CLEAR + Math.max(-Cost.CLEAR, LowIntervalLimits.below(keys[lower], keys[upper])));
            }
        }
        return mud;
    }

    static int thickness(int[] keys, ChordTones tones) {
        int units = tones.isGuide(tones.at(keys[0])) ? 0 : 1;
        int[] times = new int[tones.count()];
        for (int key : keys) {
            int tone = tones.at(key);
            if (tone >= 0) {
                units += times[tone] == 0 ? tones.unwanted(tone) : tones.doubled(tone, tones.at(keys[0]));
                units += times[tone] > 1 ? 2 : 0;
                times[tone]++;
            }
        }
        boolean hollow = tones.fifth() != 0 && times[Integer.numberOfTrailingZeros(tones.fifth())] == 0;
        return units + (hollow ? tones.hollow() : 0);
    }

    /** What the change from the chord with that index to the next costs. */
    public Cost change(int index, int[] from, int[] to) {
        ChordTones before = chords.get(index);
        ChordTones after = chords.get(index + 1);
        VoiceMoveCost move = new VoiceMoveCost(before, after, key);
        int motion = 0;
        int leaps = 0;
        int unresolved = 0;
        int rough = overlaps(from, to) + unequal(from, to, before) + hidden(from, to);
        for (int voice = 0; voice < voices; voice++) {
            int step = to[voice] - from[voice];
            int tone = before.at(from[voice]);
            VoicePlace place = place(voice, voices, texture.hasBass());
            motion += VoiceMoveCost.motion(place, step);
            leaps +=
                    weights.leap() * VoiceMoveCost.leap(place, step) + weights.line() * VoiceMoveCost.line(place, step);
            unresolved += move.isUnresolved(place, tone, step) ? 1 : 0;
            rough += move.isAugmented(tone, after.at(to[voice]), step) ? 1 : 0;
        }
        return new Cost(
                weights.motion() * motion,
                leaps,
                parallels(from, to),
                weights.lost() * lost(from, to, before, after),
                weights.unresolved() * unresolved,
                weights.rough() * rough,
                0,
                0,
                0,
                0);
    }

    static VoicePlace place(int voice, int voices, boolean hasBass) {
        return voice == 0 && hasBass ? VoicePlace.BASS : voice == voices - 1 ? VoicePlace.TOP : VoicePlace.INNER;
    }

    private static int lost(int[] from, int[] to, ChordTones before, ChordTones after) {
        int common = before.keys() & after.keys();
        int kept = 0;
        for (int voice = 0; voice < from.length; voice++) {
            kept |= from[voice] == to[voice] ? 1 << from[voice] % 12 : 0;
        }
        return Integer.bitCount(common & ~kept);
    }

    private int parallels(int[] from, int[] to) {
        int sum = 0;
        for (int upper = 1; upper < voices; upper++) {
            for (int lower = 0; lower < upper; lower++) {
                sum += parallel(from, to, lower, upper);
            }
        }
        return sum;
    }

    private int parallel(int[] from, int[] to, int lower, int upper) {
        int below = to[lower] - from[lower];
        int above = to[upper] - from[upper];
        if (below == 0 || above == 0 || !runs(from, to, lower, upper)) {
            return 0;
        }
        boolean leftHand = upper < texture.leftHand();
        return (below > 0) != (above > 0) ? weights.contrary() : leftHand ? weights.leftParallel() : weights.parallel();
    }

    private static boolean runs(int[] from, int[] to, int lower, int upper) {
        return PerfectInterval.running(perfect(from, lower, upper), perfect(to, lower, upper)) != PerfectInterval.NONE;
    }

    private static PerfectInterval perfect(int[] keys, int lower, int upper) {
        return PerfectInterval.between(keys[lower], keys[upper]);
    }

    private static boolean sameWay(int[] from, int[] to, int lower, int upper) {
        return (to[lower] - from[lower]) * (to[upper] - from[upper]) > 0;
    }

    private static int overlaps(int[] from, int[] to) {
        return (int) IntStream.range(1, from.length)
                .filter(voice -> to[voice - 1] > from[voice] || from[voice - 1] > to[voice])
                .count();
    }

    private static int unequal(int[] from, int[] to, ChordTones before) {
        return (int) IntStream.range(1, from.length)
                .filter(voice -> isDiminishedFifth(from, voice, before)
                        && perfect(to, 0, voice) == PerfectInterval.FIFTH
                        && sameWay(from, to, 0, voice))
                .count();
    }

    /** Whether the voice stands a diminished fifth, or an octave more, above the bass. */
    static boolean isDiminishedFifth(int[] keys, int voice, ChordTones tones) {
        int lower = tones.at(keys[0]);
        int upper = tones.at(keys[voice]);
        return (keys[voice] - keys[0]) % 12 == TRITONE
                && lower >= 0
                && upper >= 0
                && tones.name(upper).fifths() - tones.name(lower).fifths() == DIMINISHED_FIFTH;
    }

    private static int hidden(int[] from, int[] to) {
        int top = from.length - 1;
        boolean reached = perfect(to, 0, top) != PerfectInterval.NONE && !runs(from, to, 0, top);
        return reached && sameWay(from, to, 0, top) && VoiceMoveCost.isLeap(to[top] - from[top]) ? 1 : 0;
    }
}
