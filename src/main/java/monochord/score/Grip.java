package monochord.score;

import java.util.List;
import monochord.theory.Beats;
import monochord.theory.Pitch;

/**
 * What both hands hold while a chord lasts.
 *
 * @param left the left hand's keys, bottom to top; may be empty
 * @param right the right hand's keys, bottom to top; may be empty
 * @param beats how long it is held, more than none
 * @param label what stands above it; empty for nothing
 */
public record Grip(List<Pitch> left, List<Pitch> right, Beats beats, String label) {
    public Grip {
        left = List.copyOf(left);
        right = List.copyOf(right);
    }

    /** Both hands down together, held to the end. */
    public Score struck() {
        Score hands = hand(left).by(Hand.LEFT).with(hand(right).by(Hand.RIGHT));
        return label.isEmpty() ? hands : hands.labelled(label);
    }

    private Score hand(List<Pitch> keys) {
        return keys.isEmpty() ? Score.rest(beats) : Score.together(keys, beats);
    }
}
