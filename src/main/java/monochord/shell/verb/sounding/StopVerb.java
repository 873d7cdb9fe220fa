package monochord.shell.verb.sounding;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.view.Answer;
import monochord.view.Saying;

/** Silence. */
final class StopVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of("stop", Usage.Topic.SOUND, "stop", "stop what is playing")
                .withSmallWords();
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        sitting.stage().ear().stop();
        return Saying.of("Silence.");
    }
}
