package monochord.shell.verb.song;

import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.music.SongAnswer;

/** Takes back what was changed last in the open song. */
final class UndoVerb implements Verb {
    @Override
    public String word() {
        return "undo";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.WRITING, Phrase.of("take the last change of the song back"));
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sitting.song().song().isEmpty()) {
            return SongVerb.none(sitting);
        }
        if (!sitting.song().undo()) {
            return Statement.no(Phrase.sentence("Nothing was changed here that could be taken back."));
        }
        sitting.settle(sitting.song().song().orElseThrow().head().key());
        return SongAnswer.SongStatement.of(
                sitting.song().song().orElseThrow(),
                Phrase.sentence("The last change is taken back."),
                SongKeeping.save(sitting));
    }
}
