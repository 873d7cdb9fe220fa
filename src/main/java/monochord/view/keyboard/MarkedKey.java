package monochord.view.keyboard;

import monochord.theory.note.Pitch;

/** A key of the keyboard that is to be seen, with the spelling and the role of its tone. */
public record MarkedKey(Pitch pitch, ToneRole role) {
    /** The key, as a MIDI note number. */
    public int key() {
        return pitch.midiNumber();
    }
}
