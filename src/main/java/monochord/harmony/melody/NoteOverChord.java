package monochord.harmony.melody;

import java.util.Optional;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;

/**
 * As much of a note as sounds over one chord.
 *
 * @param note which note of the tune, from 0
 * @param start beats from the start of the tune
 * @param held whether the note began over the chord before
 * @param span the chord under it with its start counted from the first chord, or null
 * @param strength of the beat it begins on, from 1 to 4
 */
record NoteOverChord(int note, Pitch pitch, Beats start, Beats beats, boolean held, ChordSpan span, int strength) {
    private static final Beats LONG = Beats.of(3, 2);

    Beats end() {
        return start.plus(beats);
    }

    Standing standing() {
        return Standing.of(pitch.name(), span.chord());
    }

    boolean isExposed() {
        return strength > Metre.STRONG && beats.compareTo(Beats.ONE) >= 0
                || strength == Metre.STRONG && beats.compareTo(Beats.ONE) > 0
                || beats.compareTo(LONG) >= 0;
    }

    /** The same with another chord under it. */
    NoteOverChord over(Chord chord) {
        return new NoteOverChord(
                note,
                pitch,
                start,
                beats,
                held,
                new ChordSpan(span.index(), chord, span.start(), span.beats()),
                strength);
    }

    FitNote judged(NoteRole role, Key key) {
        Optional<NoteChange> change =
                role == NoteRole.CLASH ? NoteChange.nearest(pitch, span.chord(), key) : Optional.empty();
        return new FitNote(
                note, pitch, start, beats, held, span, span == null ? null : standing(), role, weight(), change);
    }

    int weight() {
        return Metre.weight(strength, beats);
    }
}
