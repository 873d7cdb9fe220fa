package monochord.shell.verb.writing;

import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs for files that are read as documents: lessons and notebooks. */
public final class WritingVerbs {
    private WritingVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        return List.of(
                new CheckVerb(), new NoteVerb(), new SaveVerb(), new OpenVerb(), new ReplayVerb(), new PublishVerb());
    }
}
