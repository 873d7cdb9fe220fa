package monochord.view.keyboard;

import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.Pitch;

/** One chord of a progression and the keys on which it is played. */
public record ChordOnKeys(Numeral numeral, Chord chord, List<Pitch> pitches) {
    public ChordOnKeys {
        pitches = List.copyOf(pitches);
    }

    public List<MarkedKey> marked() {
        return ToneRoles.marked(pitches, chord);
    }
}
