package monochord.shell.verb.keeping;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import monochord.shell.sentence.Verb;

/** The verbs of this package. */
public final class KeepingVerbs {
    private KeepingVerbs() {}

    /** @param verbs finds any verb by its word */
    public static List<Verb> all(Function<String, Optional<Verb>> verbs) {
        return List.of(new SettingsVerb(verbs), new AnswersVerb(), new DoctorVerb());
    }
}
