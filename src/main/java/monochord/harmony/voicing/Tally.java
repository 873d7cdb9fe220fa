package monochord.harmony.voicing;

import java.util.List;
import monochord.theory.Pitch;

/**
 * What moves and what stays in a row of voicings, counted and not weighed.
 *
 * <p>Voices are joined bottom to top. Where one chord is fuller than the next, each key of the fuller one is joined to one
 * of the thinner, none left out and no two crossing, in the way that moves least.
 *
 * @param moved half steps of all voices
 * @param parallels pairs of voices that go the same way from octave or unison to octave, or from fifth to fifth
 * @param held voices that stay on their key, counted at each change
 */
public record Tally(int moved, int parallels, int held) {
    private static final int FIFTH = 7;

    static Tally of(List<Voicing> voicings) {
        Tally sum = new Tally(0, 0, 0);
        for (int i = 1; i < voicings.size(); i++) {
            sum = sum.plus(between(voicings.get(i - 1), voicings.get(i)));
        }
        return sum;
    }

    static Tally between(Voicing from, Voicing to) {
        List<Join> joins = Join.of(from.pitches(), to.pitches());
        int moved = joins.stream().mapToInt(join -> Math.abs(join.halfSteps())).sum();
        int held = (int) joins.stream().filter(join -> join.halfSteps() == 0).count();
        int parallels = 0;
        for (int upper = 1; upper < joins.size(); upper++) {
            for (int lower = 0; lower < upper; lower++) {
                parallels += areParallel(joins.get(lower), joins.get(upper)) ? 1 : 0;
            }
        }
        return new Tally(moved, parallels, held);
    }

    private static boolean areParallel(Join lower, Join upper) {
        int before = between(lower.from(), upper.from());
        int after = between(lower.to(), upper.to());
        boolean sameWay = lower.halfSteps() * upper.halfSteps() > 0;
        return sameWay && before == after && (before == 0 || before == FIFTH);
    }

    private static int between(Pitch lower, Pitch upper) {
        return Math.floorMod(upper.midiNumber() - lower.midiNumber(), 12);
    }

    private Tally plus(Tally other) {
        return new Tally(moved + other.moved, parallels + other.parallels, held + other.held);
    }
}
