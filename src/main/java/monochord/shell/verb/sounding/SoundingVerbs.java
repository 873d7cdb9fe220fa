package monochord.shell.verb.sounding;

import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs that sound, and that say how. */
public final class SoundingVerbs {
    private SoundingVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        return List.of(
                new PlayVerb(),
                new CompareVerb(),
                new TempoVerb(),
                new PatchVerb(),
                new BankVerb(),
                new StopVerb(),
                new KeysVerb());
    }
}
