package monochord.score;

import java.util.List;
import java.util.stream.IntStream;
import monochord.harmony.voicing.Voicing;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * Two hands for a progression: the bass in the left, as {@link LeftHand} says, the chord in the right, as {@link
 * RightHand} says.
 */
public final class Comping {
    private Comping() {}

    /** What the hands hold, one voicing for each change. The same changes always give the same voicings. */
    public static List<TimedVoicing> voicings(List<HeldChord> changes) {
        List<NoteName> basses = changes.stream().map(HeldChord::bass).toList();
        List<Pitch> left = LeftHand.follow(basses);
        List<List<Pitch>> right = RightHand.follow(changes);
        return IntStream.range(0, changes.size())
                .mapToObj(i -> voicing(changes.get(i), left.get(i), right.get(i)))
                .toList();
    }

    private static TimedVoicing voicing(HeldChord change, Pitch left, List<Pitch> right) {
        return new TimedVoicing(new Voicing(List.of(left), right), change.beats(), change.label());
    }

    /** The voicings one after another, each struck once and held. */
    public static Score of(List<HeldChord> changes) {
        return new Score.InTurn(
                voicings(changes).stream().map(TimedVoicing::struck).toList());
    }
}
