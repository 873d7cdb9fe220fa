package monochord.harmony.voicing;

import java.util.List;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;

/**
 * A rule broken, and where.
 *
 * @param names what is missing, or what sounds twice; empty where the pitches say it all
 * @param pitches the pitches that break the rule; empty where something is missing
 */
public record BrokenRule(VoicingRule rule, List<NoteName> names, List<Pitch> pitches) {
    public BrokenRule {
        names = List.copyOf(names);
        pitches = List.copyOf(pitches);
    }
}
