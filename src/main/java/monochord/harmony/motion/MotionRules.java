package monochord.harmony.motion;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.motion.Finding.FindingKind;
import monochord.harmony.motion.Finding.Weight;
import monochord.theory.note.Pitch;

/** Goes through a passage chord by chord; what is a fault in a change, the rules of each strictness say. */
abstract class MotionRules {
    private final Weight weight;
    private final List<Finding> found = new ArrayList<>();

    /** @param crossing how heavy it weighs if a voice sounds above its upper neighbour */
    MotionRules(Weight crossing) {
        this.weight = crossing;
    }

    final List<Finding> judge(Passage passage, List<MotionStep> steps) {
        crossings(passage.chords().get(0), 0);
        for (int i = 0; i < steps.size(); i++) {
            change(steps.get(i), i + 1);
            crossings(passage.chords().get(i + 1), i + 1);
        }
        return found;
    }

    /** @param at the chord reached, from 0 */
    abstract void change(MotionStep step, int at);

    final void add(FindingKind kind, Weight heavy, int at, List<Integer> voices) {
        found.add(new Finding(kind, heavy, at, voices));
    }

    private void crossings(List<Pitch> chord, int at) {
        for (int voice = 0; voice + 1 < chord.size(); voice++) {
            if (isAbove(chord.get(voice), chord.get(voice + 1))) {
                add(FindingKind.CROSSING, weight, at, List.of(voice, voice + 1));
            }
        }
    }

    static boolean isAbove(Pitch one, Pitch other) {
        return one.midiNumber() > other.midiNumber();
    }
}
