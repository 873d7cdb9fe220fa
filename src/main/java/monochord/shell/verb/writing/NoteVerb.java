package monochord.shell.verb.writing;

import static monochord.shell.sentence.FormPart.takes;

import java.util.Optional;
import monochord.lesson.read.MarkdownGuard;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Puts the person's own words into the notebook. */
final class NoteVerb implements Verb {
    private static final int LONGEST = 1900;

    @Override
    public String word() {
        return "note";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("put words of your own into the notebook; Markdown is allowed"))
                .form(takes(Value.TEXT))
                .examples("note The last chorus wants *one* colour, not three.");
    }

    @Override
    public boolean readsWhole() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        String words = sentence.whole().strip();
        if (words.isEmpty() || written(words) > LONGEST) {
            Clause why = words.isEmpty()
                    ? Clause.of("say it behind the verb")
                    : Clause.of("it has more than {0} characters", LONGEST);
            throw Unreadable.because(words, 0, "a note", why, "note Try this in the last chorus.");
        }
        Optional<Phrase> told = sitting.journal().words(words);
        return new NotebookRemark(Statement.of(told.orElseGet(() -> Phrase.of("Noted."))));
    }

    /** In the notebook HTML is longer than here. */
    private static int written(String words) {
        return MarkdownGuard.withoutHtml(words).length();
    }
}
