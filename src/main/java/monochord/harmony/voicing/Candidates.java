package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import monochord.harmony.voicing.cost.ChordTones;
import monochord.theory.note.Pitch;

/**
 * Every way to play one chord in a style that keeps the rules: what must sound sounds, nothing is doubled that must not
 * be, the bass is right, voices and hands do not cross, each hand stays within reach and range, no interval lies below its
 * {@link monochord.harmony.voicing.cost.LowIntervalLimits}. None is left out to save time.
 */
final class Candidates {
    private final ChordTones tones;
    private final Layout layout;
    private final OptionalInt tune;
    private final int[] keys;
    private final List<int[]> found = new ArrayList<>();

    private Candidates(ChordTones tones, Layout layout, OptionalInt tune) {
        this.tones = tones;
        this.layout = layout;
        this.tune = tune;
        this.keys = new int[layout.voices()];
    }

    /** The keys of each, as MIDI note numbers, bass first. */
    static List<int[]> of(VoicingTask task, int index, int voices) {
        OptionalInt tune = task.tops()
                .get(index)
                .map(Pitch::midiNumber)
                .map(OptionalInt::of)
                .orElse(OptionalInt.empty());
        Layout layout = new Layout(task.style(), voices, task.reach());
        Candidates candidates = new Candidates(task.tones(index, voices), layout, tune);
        candidates.place(0, 0);
        return candidates.found;
    }

    private void place(int voice, int used) {
        if (voice == keys.length) {
            if (layout.holds(keys)) {
                found.add(keys.clone());
            }
            return;
        }
        boolean top = voice == keys.length - 1;
        int above = voice == 0 ? 0 : keys[voice - 1] + 1;
        int low = top && tune.isPresent() ? tune.getAsInt() : layout.lowest(voice);
        int high = top && tune.isPresent() ? tune.getAsInt() : layout.highest(voice);
        for (int key = Math.max(low, above); key <= high; key++) {
            int tone = tones.at(key);
            boolean fits = tone >= 0
                    && (voice > 0 || tones.mayBeLowest(tone))
                    && (top || !tones.isOnTopOnly(tone))
                    && maySound(tone, used)
                    && missing(used | 1 << tone) < keys.length - voice;
            keys[voice] = key;
            if (fits && layout.fits(keys, voice)) {
                place(voice + 1, used | 1 << tone);
            }
        }
    }

    /** Whether a tone may join those that sound: again if it may be doubled, and no second one of several alternatives. */
    private boolean maySound(int tone, int used) {
        int bit = 1 << tone;
        boolean again = (used & bit) != 0;
        boolean second = (tones.alternatives() & bit) != 0 && (used & tones.alternatives()) != 0;
        return again ? (tones.doubles() & bit) != 0 : !second;
    }

    private int missing(int used) {
        boolean oneMore = tones.alternatives() != 0 && (used & tones.alternatives()) == 0;
        return Integer.bitCount(tones.must() & ~used) + (oneMore ? 1 : 0);
    }
}
