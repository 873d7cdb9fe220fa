package monochord.shell.verb.course;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.sentence.Verb;

/** The verbs of learning and teaching. */
public final class CourseVerbs {
    private CourseVerbs() {}

    /** In the order in which help lists them. */
    public static List<Verb> all() {
        List<Verb> verbs = new ArrayList<>(List.of(
                new LessonsVerb(),
                new LearnVerb(),
                new AskVerb(),
                new PractiseVerb(),
                new SkillsVerb(),
                new HearVerb(),
                new ReviewVerb(),
                new ProgressVerb(),
                new NotesVerb()));
        verbs.addAll(List.of(HelpOnQuestion.values()));
        verbs.add(new PresentVerb());
        return verbs;
    }
}
