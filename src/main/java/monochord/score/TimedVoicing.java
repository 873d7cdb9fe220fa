package monochord.score;

import java.util.List;
import monochord.harmony.voicing.Voicing;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * What both hands hold while a chord lasts.
 *
 * @param hands the keys of each hand; one or both may be empty
 * @param beats how long it is held, more than none
 * @param label what stands above it; empty for nothing
 */
public record TimedVoicing(Voicing hands, Beats beats, String label) {
    /** Other keys for as long, under the same label. */
    TimedVoicing with(Voicing other) {
        return new TimedVoicing(other, beats, label);
    }

    /** Both hands down together, held to the end. */
    public Score struck() {
        Score both = hand(hands.left()).by(Hand.LEFT).with(hand(hands.right()).by(Hand.RIGHT));
        return label.isEmpty() ? both : both.labelled(label);
    }

    private Score hand(List<Pitch> keys) {
        return keys.isEmpty() ? Score.rest(beats) : Score.together(keys, beats);
    }
}
