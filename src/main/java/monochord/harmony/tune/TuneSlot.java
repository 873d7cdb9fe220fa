package monochord.harmony.tune;

import java.util.List;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Interval;
import monochord.theory.note.NoteName;

/**
 * A stretch of a tune that gets one chord, and what sounds in it.
 *
 * @param start beats from the first full bar, below 0 in the pick-up
 * @param isAtBar whether a bar begins with it
 * @param isRest whether the fourth bar of four comes to rest in it
 */
record TuneSlot(double start, Beats beats, boolean isAtBar, boolean isRest, List<SlotNote> notes) {
    /**
     * @param beats how long it sounds within the slot
     * @param isStrong whether it sounds as the slot begins
     */
    record SlotNote(NoteName name, double beats, boolean isStrong) {
        double weight() {
            return beats * (isStrong ? TuneWeights.STRONG : 1);
        }

        double worth(Chord chord) {
            Interval above = chord.root().to(name);
            if (chord.kind().holds(above)) {
                return above.number() == 1
                        ? TuneWeights.ROOT
                        : above.number() == 7 ? TuneWeights.SEVENTH : TuneWeights.CHORD_NOTE;
            }
            return isStrong && rubs(chord) ? TuneWeights.RUB : TuneWeights.OTHER;
        }

        boolean rubs(Chord chord) {
            return chord.tones().stream()
                    .map(tone -> Math.floorMod(tone.pitchClass() - name.pitchClass(), 12))
                    .anyMatch(distance -> distance == 1 || distance == 11);
        }
    }

    TuneSlot {
        notes = List.copyOf(notes);
    }

    double length() {
        return (double) beats.numerator() / beats.denominator();
    }

    boolean sounds(NoteName name) {
        return notes.stream().anyMatch(note -> note.name().equals(name));
    }

    /** From {@code RUB} to {@code ROOT}; 0 where nothing sounds. */
    double fit(Chord chord) {
        double worth = 0;
        double weight = 0;
        for (SlotNote note : notes) {
            worth += note.weight() * note.worth(chord);
            weight += note.weight();
        }
        return weight == 0 ? 0 : worth / weight;
    }
}
