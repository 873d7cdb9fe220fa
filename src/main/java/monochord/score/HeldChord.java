package monochord.score;

import java.util.List;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;

/**
 * A chord as the hands need it: what the bass plays, which tones there are, for how long.
 *
 * @param bass the lowest note, for the left hand; the root unless a slash or an inversion says otherwise
 * @param tones the tones of the chord, root first, at least one
 * @param beats how long the chord lasts, more than none
 * @param label what stands above it, such as {@code Abmaj7}; empty for nothing
 */
public record HeldChord(NoteName bass, List<NoteName> tones, Beats beats, String label) {
    /** @throws IllegalArgumentException if there are no tones or no length */
    public HeldChord {
        tones = List.copyOf(tones);
        if (tones.isEmpty() || beats.isZero()) {
            throw new IllegalArgumentException("a change needs tones and a length, not " + tones + " for " + beats);
        }
    }
}
