package monochord.harmony.melody;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * A note of a tune, or the part of it that sounds over one chord.
 *
 * @param note which note of the tune, from 0
 * @param start beats from the start of the tune, its pick-up included
 * @param held whether the note began over the chord before
 * @param span the chord under it, or null where none has begun
 * @param standing how it would stand if it were held, or null where no chord has begun
 * @param weight from 1 to 32, see {@link Fit}
 * @param change the nearest note that would fit, where it clashes
 */
public record FitNote(
        int note,
        Pitch pitch,
        Beats start,
        Beats beats,
        boolean held,
        ChordSpan span,
        Standing standing,
        NoteRole role,
        int weight,
        Optional<NoteChange> change) {
    public boolean clashes() {
        return role == NoteRole.CLASH;
    }

    /** The chord under it; none where none has begun. */
    public Optional<Chord> chord() {
        return Optional.ofNullable(span).map(ChordSpan::chord);
    }
}
