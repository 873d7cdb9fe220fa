package monochord.shell.verb.song;

import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs of the song. */
public final class SongVerbs {
    private SongVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        return List.of(new SongVerb(), new ChangeVerb(), new UndoVerb(), new RehearseVerb());
    }
}
