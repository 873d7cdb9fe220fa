package monochord.harmony.after;

import java.util.List;
import monochord.harmony.motion.VoiceLeading;
import monochord.text.MusicWords;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/** One chord followed by another: what stays, how far the voices go in closest position, how the root moves. */
public record ChordMove(Chord from, Chord to) {
    private static final Phrase TRITONE = Phrase.of("the root leaps a tritone");

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

    /** {@code the root falls a fifth, and G stays}: a clause. */
    public Phrase inWords() {
        List<NoteName> held = held();
        return held.isEmpty()
                ? Phrase.of("{0}, and no note stays", rootInWords())
                : Phrase.counted(
                        held.size(), "{0}, and {1} stays", "{0}, and {1} stay", rootInWords(), Phrase.list(held));
    }

    /** {@code the root falls a fifth}, {@code the root rises a whole step}, {@code the root stays}. */
    public Phrase rootInWords() {
        Interval up = rootUp();
        return switch (up.number()) {
            case 1 ->
                up.equals(Interval.UNISON) ? Phrase.of("the root stays") : Phrase.of("the root slides a half step");
            case 2 -> Phrase.of("the root rises {0}", MusicWords.step(up));
            case 3 -> Phrase.of("the root rises {0}", Phrase.one(up));
            case 4 -> up.equals(Interval.PERFECT_FOURTH) ? Phrase.of("the root falls a fifth") : TRITONE;
            case 5 -> up.equals(Interval.PERFECT_FIFTH) ? Phrase.of("the root falls a fourth") : TRITONE;
            case 6 -> Phrase.of("the root falls {0}", Phrase.one(up.inverted()));
            default -> Phrase.of("the root falls {0}", MusicWords.step(up.inverted()));
        };
    }
}
