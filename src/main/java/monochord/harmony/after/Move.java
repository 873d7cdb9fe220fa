package monochord.harmony.after;

import java.util.Arrays;
import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Interval;
import monochord.theory.NoteName;

/** One chord followed by another: what stays, how far the voices go in closest position, how the root moves. */
public record Move(Chord from, Chord to) {
    private static final int KEYS_PER_OCTAVE = 12;
    private static final int FAR = 1_000;

    /** The tones of the first chord that sound on, in its own spelling and order; the bass is left open. */
    public List<NoteName> held() {
        return from.tones().stream()
                .filter(tone -> to.tones().stream().anyMatch(tone::soundsLike))
                .toList();
    }

    /**
     * The least half steps moved in all voices together, octaves left open; a tone of the smaller chord is doubled for
     * each that the larger one has more.
     *
     * <p>Source for the measure: Integrated Music Theory (open university course text), lesson 19b.
     */
    public int halfSteps() {
        boolean growing = to.tones().size() > from.tones().size();
        int[] many = keys(growing ? to : from);
        int[] few = keys(growing ? from : to);
        int all = (1 << few.length) - 1;
        int[] least = new int[all + 1];
        Arrays.fill(least, FAR);
        least[0] = 0;
        for (int key : many) {
            least = withOneMore(least, key, few);
        }
        return least[all];
    }

    /** For each set of tones of the smaller chord that are reached, the least way when one more tone has gone somewhere. */
    private static int[] withOneMore(int[] least, int key, int[] few) {
        int[] next = new int[least.length];
        Arrays.fill(next, FAR);
        for (int reached = 0; reached < least.length; reached++) {
            for (int i = 0; i < few.length; i++) {
                int set = reached | 1 << i;
                next[set] = Math.min(next[set], least[reached] + distance(key, few[i]));
            }
        }
        return next;
    }

    private static int[] keys(Chord chord) {
        return chord.tones().stream().mapToInt(NoteName::pitchClass).toArray();
    }

    private static int distance(int one, int other) {
        int up = Math.floorMod(other - one, KEYS_PER_OCTAVE);
        return Math.min(up, KEYS_PER_OCTAVE - up);
    }

    /** From root to root by the way a bass would go: up to a third or a fourth up, or down. */
    Interval rootUp() {
        return from.root().to(to.root());
    }

    /** {@code the root falls a fifth}, {@code the root rises a whole step}, {@code the root stays}. */
    public String rootInWords() {
        Interval up = rootUp();
        return switch (up.number()) {
            case 1 -> up.equals(Interval.UNISON) ? "the root stays" : "the root slides a half step";
            case 2 -> "the root rises " + step(up);
            case 3 -> "the root rises a " + up.inWords();
            case 4 -> up.equals(Interval.PERFECT_FOURTH) ? "the root falls a fifth" : "the root leaps a tritone";
            case 5 -> up.equals(Interval.PERFECT_FIFTH) ? "the root falls a fourth" : "the root leaps a tritone";
            case 6 -> "the root falls a " + up.inverted().inWords();
            default -> "the root falls " + step(up.inverted());
        };
    }

    private static String step(Interval second) {
        return switch (second.semitones()) {
            case 1 -> "a half step";
            case 2 -> "a whole step";
            default -> "an " + second.inWords();
        };
    }
}
