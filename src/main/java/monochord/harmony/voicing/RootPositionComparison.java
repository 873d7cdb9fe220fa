package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.MotionStep;
import monochord.harmony.motion.VoiceMove;
import monochord.harmony.voicing.cost.Cost;
import monochord.theory.Chord;

/**
 * What happens in a way to play a progression, next to the plain root-position version of the same chords. {@link
 * VoicingExplanation} puts it into sentences.
 *
 * @param plain the same chords as {@link RootPositions} plays them
 * @param plainCost what those cost by the same formula
 * @param changes one for each change of chord
 */
public record RootPositionComparison(
        VoicedProgression way,
        MovementCount tally,
        List<Voicing> plain,
        MovementCount plainTally,
        Cost plainCost,
        List<HandMoves> changes) {
    /**
     * One change of chord.
     *
     * @param left what the voices do that the left hand plays in the second chord, bottom to top
     * @param right the same for the right hand
     */
    public record HandMoves(
            Chord from,
            Chord to,
            List<VoiceMove> left,
            List<VoiceMove> right,
            MovementCount tally,
            MovementCount plainTally) {
        public HandMoves {
            left = List.copyOf(left);
            right = List.copyOf(right);
        }
    }

    public RootPositionComparison {
        plain = List.copyOf(plain);
        changes = List.copyOf(changes);
    }

    public static RootPositionComparison of(VoicedProgression way) {
        List<Voicing> plain = RootPositions.of(way.task().chords());
        List<HandMoves> changes = new ArrayList<>();
        for (int i = 1; i < way.voicings().size(); i++) {
            changes.add(change(way, plain, i));
        }
        return new RootPositionComparison(
                way, way.tally(), plain, MovementCount.of(plain), way.task().cost(plain), changes);
    }

    private static HandMoves change(VoicedProgression way, List<Voicing> plain, int i) {
        Voicing from = way.voicings().get(i - 1);
        Voicing to = way.voicings().get(i);
        List<VoiceMove> moves = MotionStep.between(from.pitches(), to.pitches()).moves();
        int left = to.left().size();
        return new HandMoves(
                way.task().chords().get(i - 1),
                way.task().chords().get(i),
                moves.subList(0, left),
                moves.subList(left, moves.size()),
                MovementCount.between(from, to),
                MovementCount.between(plain.get(i - 1), plain.get(i)));
    }
}
