package monochord.shell.verb.music;

import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs that compute something about music. */
public final class MusicVerbs {
    private MusicVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        return List.of(
                new KeyVerb(),
                new ShowVerb(),
                new NameVerb(),
                new NumeralVerb(),
                new BorrowVerb(),
                new AfterVerb(),
                new MotionVerb(),
                new HarmoniseVerb(),
                new FitVerb(),
                new RecolourVerb(),
                new VoiceVerb(),
                new BassVerb(),
                new TransposeVerb());
    }
}
