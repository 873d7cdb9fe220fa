package monochord.harmony.colour;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;

/** Every chord that can stand in every place of one progression, and what each counts there. */
final class OptionTable {
    final Key key;
    private final List<List<ChordOption>> shades = new ArrayList<>();
    private final List<int[]> counts = new ArrayList<>();
    private final TuneClashes tune;

    /** @param melody the tune, or null */
    OptionTable(Progression progression, Melody melody) {
        this.key = progression.key();
        this.tune = new TuneClashes(melody, progression);
        List<ChordEvent> struck = Recolour.struck(progression);
        ChordOptions palette = new ChordOptions(key);
        for (int at = 0; at < struck.size(); at++) {
            ChordEvent slot = struck.get(at);
            boolean last = at + 1 == struck.size();
            List<ChordOption> here =
                    palette.of(slot, at == 0 ? null : struck.get(at - 1), last ? null : struck.get(at + 1));
            shades.add(here);
            counts.add(counts(at, here, last));
        }
    }

    private int[] counts(int at, List<ChordOption> here, boolean last) {
        int[] counts = new int[here.size()];
        for (int i = 0; i < counts.length; i++) {
            ChordOption shade = here.get(i);
            counts[i] = ChordScore.inPlaceOf(here.get(0), shade, key, last)
                    - RecolourWeights.CLASH * tune.friction(at, shade.chord);
        }
        return counts;
    }

    int size() {
        return shades.size();
    }

    /** What can stand there, what stands there now as the first. */
    List<ChordOption> shades(int at) {
        return shades.get(at);
    }

    /** What the chord counts there by itself. */
    int count(int at, int shade) {
        return counts.get(at)[shade];
    }

    /** The score of the progression as it is. */
    int plainScore() {
        int score = 0;
        for (int at = 0; at < size(); at++) {
            score += count(at, 0);
            score += at == 0
                    ? 0
                    : TransitionScore.score(shades(at - 1).get(0), shades(at).get(0));
        }
        return score;
    }

    /** What one change adds to the score. */
    int gain(int at, int shade) {
        return count(at, shade)
                - count(at, 0)
                + around(at, shades(at).get(shade))
                - around(at, shades(at).get(0));
    }

    private int around(int at, ChordOption shade) {
        int before = at == 0 ? 0 : TransitionScore.score(shades(at - 1).get(0), shade);
        int after = at + 1 == size()
                ? 0
                : TransitionScore.score(shade, shades(at + 1).get(0));
        return before + after;
    }

    Idea idea(int at, ChordOption shade) {
        ChordOption plain = shades(at).get(0);
        ChordOption before = at == 0 ? null : shades(at - 1).get(0);
        ChordOption after = at + 1 == size() ? null : shades(at + 1).get(0);
        int friction = tune.friction(at, shade.chord) - tune.friction(at, plain.chord);
        return new Idea(
                at,
                plain.chord,
                plain.numeral,
                shade.chord,
                shade.numeral,
                shade.colour,
                gain(at, shades(at).indexOf(shade)),
                new SubstitutionReasons(key, plain, shade, before, after).list(friction),
                tune.clashes(at, shade.chord));
    }
}
