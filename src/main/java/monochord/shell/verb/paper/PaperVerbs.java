package monochord.shell.verb.paper;

import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs that make something to hand on. */
public final class PaperVerbs {
    private PaperVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        return List.of(new SheetVerb(), new ChartVerb());
    }
}
