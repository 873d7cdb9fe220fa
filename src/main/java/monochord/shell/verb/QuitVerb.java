package monochord.shell.verb;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Ends the sitting. */
final class QuitVerb implements Verb {
    @Override
    public String word() {
        return "quit";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.LEAVING, Phrase.of("leave; ctrl-D does the same"));
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Answer farewell = Statement.of(Phrase.of("Until next time."));
        Answer said = farewell;
        if (sitting.teaching().isInRun()) {
            said = Answers.of(sitting.teaching().endRun(), farewell);
        } else if (sitting.teaching().rehearsing().isOpen()) {
            said = Answers.of(sitting.teaching().rehearsing().end(), farewell);
        }
        sitting.end();
        return new NotebookRemark(said);
    }
}
