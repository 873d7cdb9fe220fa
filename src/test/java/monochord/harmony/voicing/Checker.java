package monochord.harmony.voicing;

import java.util.ArrayList;
import java.util.List;
import monochord.theory.note.Pitch;

/**
 * The textbook faults of four voices, worked out anew for the tests, from the definitions alone.
 *
 * <p>Source: Integrated Music Theory (open university course text), lessons 10a and 10b, for parallels, contrary and hidden
 * fifths and octaves, unequal fifths and crossings; Open Music Theory (2014), "firstSpecies" and "intervals", for overlaps
 * and augmented steps.
 */
final class Checker {
    private Checker() {}

    static List<String> faults(List<List<Pitch>> chords) {
        List<String> faults = new ArrayList<>();
        for (List<Pitch> chord : chords) {
            for (int v = 1; v < chord.size(); v++) {
                if (midi(chord, v) < midi(chord, v - 1)) {
                    faults.add("crossing in " + chord);
                }
            }
        }
        for (int i = 1; i < chords.size(); i++) {
            change(chords.get(i - 1), chords.get(i), faults);
        }
        return faults;
    }

    private static int midi(List<Pitch> chord, int voice) {
        return chord.get(voice).midiNumber();
    }

    private static void change(List<Pitch> a, List<Pitch> b, List<String> faults) {
        String where = " from " + a + " to " + b;
        int top = a.size() - 1;
        for (int lower = 0; lower < top; lower++) {
            for (int upper = lower + 1; upper <= top; upper++) {
                int before = (midi(a, upper) - midi(a, lower)) % 12;
                int after = (midi(b, upper) - midi(b, lower)) % 12;
                boolean bothMove = midi(a, lower) != midi(b, lower) && midi(a, upper) != midi(b, upper);
                boolean together = (midi(b, lower) > midi(a, lower)) == (midi(b, upper) > midi(a, upper));
                if (bothMove && before == after && (after == 0 || after == 7)) {
                    faults.add((together ? "parallel " : "contrary ") + after + " of " + lower + upper + where);
                }
                boolean diminished = before == 6
                        && (a.get(upper).staffPosition() - a.get(lower).staffPosition()) % 7 == 4;
                if (lower == 0 && bothMove && together && diminished && after == 7) {
                    faults.add("unequal fifths of " + lower + upper + where);
                }
                boolean leaps = Math.abs(midi(b, upper) - midi(a, upper)) > 2;
                if (lower == 0 && upper == top && bothMove && together && leaps && before != after) {
                    if (after == 0 || after == 7) {
                        faults.add("hidden " + after + where);
                    }
                }
            }
        }
        for (int v = 0; v <= top; v++) {
            if (v < top && midi(b, v) > midi(a, v + 1) || v > 0 && midi(b, v) < midi(a, v - 1)) {
                faults.add("overlap of " + v + where);
            }
            int letters = Math.abs(b.get(v).staffPosition() - a.get(v).staffPosition());
            int halfSteps = Math.abs(midi(b, v) - midi(a, v));
            if (letters == 1 && halfSteps == 3 || letters == 3 && halfSteps == 6) {
                faults.add("augmented step of " + v + where);
            }
        }
    }
}
