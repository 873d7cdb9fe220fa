package monochord.shell.verb.classroom;

import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs of a class. */
public final class ClassroomVerbs {
    private ClassroomVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        return List.of(new AssignVerb(), new MarkVerb(), new ClassVerb());
    }
}
