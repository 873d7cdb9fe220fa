package monochord.harmony.voicing;

import java.util.List;

/**
 * One way to play the whole of a task.
 *
 * @param voicings one for each chord
 */
public record Way(Task task, List<Voicing> voicings, Cost cost) {
    public Way {
        voicings = List.copyOf(voicings);
    }

    public Tally tally() {
        return Tally.of(voicings);
    }
}
