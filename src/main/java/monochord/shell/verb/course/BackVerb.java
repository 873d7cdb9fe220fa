package monochord.shell.verb.course;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Unreadable;
import monochord.view.Answer;

/** Goes back a step in a lesson before a room. */
final class BackVerb implements Verb {
    @Override
    public String word() {
        return "back";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.Topic.TEACHING, Phrase.of("go back a step in a lesson that is being presented"));
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
