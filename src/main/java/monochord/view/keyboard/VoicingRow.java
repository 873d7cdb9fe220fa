package monochord.view.keyboard;

import monochord.harmony.voicing.Voicing;
import monochord.theory.Chord;

/** A chord and how two hands play it. */
public record VoicingRow(Chord chord, Voicing voicing) {
    int voices() {
        return voicing.pitches().size();
    }
}
