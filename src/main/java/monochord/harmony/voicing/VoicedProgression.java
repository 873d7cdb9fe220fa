package monochord.harmony.voicing;

import java.util.List;
import monochord.harmony.voicing.cost.Cost;

/**
 * One way to play the whole of a task.
 *
 * @param voicings one for each chord
 */
public record VoicedProgression(VoicingTask task, List<Voicing> voicings, Cost cost) {
    public VoicedProgression {
        voicings = List.copyOf(voicings);
    }

    public MovementCount tally() {
        return MovementCount.of(voicings);
    }
}
