package monochord.view.staff;

import java.util.List;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/**
 * What one voice of one staff does from one moment on.
 *
 * @param voice on which staff
 * @param pitches from the bottom up; empty unless it is notes
 * @param tied whether all of its notes go on in the next event of the voice
 * @param sung syllables under it, one for each verse; one that ends in a hyphen goes on
 */
public record StaffEvent(
        Voice voice, Kind kind, List<Pitch> pitches, NoteLength length, boolean tied, List<Phrase> sung) {
    /** What it is. */
    public enum Kind {
        NOTES,
        REST,
        /** A slash without a stem: play time. */
        SLASH,
        /** A slash with a stem: play this rhythm. */
        HIT
    }

    /**
     * @param staff 0 for the upper or only one, 1 for the lower
     * @param second whether it is the lower of two voices
     */
    public record Voice(int staff, boolean second) {
        /** The one voice of a single staff. */
        public static final Voice ONLY = new Voice(0, false);
    }

    public StaffEvent {
        pitches = pitches.stream().sorted().toList();
        sung = List.copyOf(sung);
        if ((kind == Kind.NOTES) == pitches.isEmpty()) {
            throw new IllegalArgumentException(kind + " with " + pitches.size() + " notes");
        }
    }

    public static StaffEvent notes(Voice voice, List<Pitch> pitches, NoteLength length) {
        return new StaffEvent(voice, Kind.NOTES, pitches, length, false, List.of());
    }

    public static StaffEvent rest(Voice voice, NoteLength length) {
        return new StaffEvent(voice, Kind.REST, List.of(), length, false, List.of());
    }

    /** Tied to what comes next in its voice. */
    public StaffEvent held() {
        return new StaffEvent(voice, kind, pitches, length, true, sung);
    }

    public StaffEvent singing(List<Phrase> syllables) {
        return new StaffEvent(voice, kind, pitches, length, tied, syllables);
    }

    boolean isOn(int staff) {
        return voice.staff == staff;
    }

    /** Whether it is drawn on a stem. */
    boolean hasStem() {
        return (kind == Kind.NOTES || kind == Kind.HIT) && length.value().hasStem();
    }
}
