package monochord.shell.verb.sounding;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;

/** Silence. */
final class StopVerb implements Verb {
    @Override
    public String word() {
        return "stop";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.SOUND, Phrase.of("stop what is playing"));
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        sitting.stage().ear().stop();
        return Statement.of(Phrase.of("Silence."));
    }
}
