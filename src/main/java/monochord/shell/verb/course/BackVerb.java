package monochord.shell.verb.course;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.theory.Unreadable;
import monochord.view.Answer;

/** Goes back a step in a lesson before a room. */
final class BackVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of("back", Usage.Topic.TEACHING, "back", "go back a step in a lesson that is being presented")
                .withSmallWords();
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        return sitting.teaching()
                .presentation()
                .orElseThrow(() ->
                        Unreadable.because("back", 0, "of use now", "no lesson is being presented", "present 1.1"))
                .back(sitting);
    }
}
