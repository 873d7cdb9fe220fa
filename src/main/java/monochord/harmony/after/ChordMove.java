package monochord.harmony.after;

import java.util.List;
import monochord.harmony.motion.VoiceLeading;
import monochord.theory.Chord;
import monochord.theory.Interval;
import monochord.theory.NoteName;

/** One chord followed by another: what stays, how far the voices go in closest position, how the root moves. */
public record ChordMove(Chord from, Chord to) {
    /** The tones of the first chord that sound on, in its own spelling and order; the bass is left open. */
    public List<NoteName> held() {
        return VoiceLeading.commonTones(from, to);
    }

    /** Half steps moved in all voices together, octaves left open. */
    public int halfSteps() {
        return VoiceLeading.halfSteps(from, to);
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
