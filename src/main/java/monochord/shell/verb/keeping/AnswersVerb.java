package monochord.shell.verb.keeping;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.Keeper;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Copies a learner's answers into a file, and brings them back from one, on this machine or another. */
final class AnswersVerb implements Verb {
    private static final String COPY = "copy ";
    private static final String RESTORE = "restore ";
    private static final String EXAMPLE = "answers copy my-answers.db";

    @Override
    public String word() {
        return "answers";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.KEEPING,
                        Phrase.of(
                                "say where your answers are kept; copy them into a file, or bring them back from one"))
                .form(may(takes(List.of(Value.FILE), "copy", "restore")), may(option(NewFile.OVER)))
                .examples("answers", EXAMPLE, "answers restore my-answers.db");
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Keeper keeper = sitting.study().keeper();
        Sentence.SentencePart body = sentence.body();
        String said = body.text().toLowerCase(Locale.ROOT);
        if (said.isEmpty()) {
            return new NotebookRemark(where(keeper));
        }
        boolean copies = said.startsWith(COPY);
        if (!copies && !said.startsWith(RESTORE)) {
            throw Unreadable.because(body.text(), 0, "wanted here", "copy or restore and a file is", EXAMPLE);
        }
        String name =
                body.text().substring(copies ? COPY.length() : RESTORE.length()).strip();
        Path file = body.read(text -> sitting.outside().file(name));
        return copies
                ? new NotebookRemark(NewFile.unlessThere(
                        List.of(new NewFile.NamedPath(name, file)),
                        sentence,
                        sitting,
                        () -> copy(keeper, name, file, sitting)))
                : new NotebookRemark(restore(keeper, file, sitting));
    }

    private static Answer where(Keeper keeper) {
        Optional<Path> place = keeper.place();
        return place.isEmpty()
                ? Statement.of(Phrase.sentence("No record is kept in this sitting."))
                : Statement.of(
                        Phrase.sentence(
                                "Your answers are in {0}.",
                                Phrase.typed(
                                        place.get().toAbsolutePath().normalize().toString())),
                        Phrase.sentence(
                                "{0} copies them into a file; {1} on another machine brings them back there.",
                                Phrase.verb(EXAMPLE), Phrase.verb("answers restore my-answers.db")));
    }

    private static Answer copy(Keeper keeper, String name, Path file, Sitting sitting) {
        try {
            int count = keeper.copy(file);
            return Statement.of(Phrase.counted(
                    count,
                    "{0} answer is in {1} now, and here as before.",
                    "{0} answers are in {1} now, and here as before.",
                    count,
                    Phrase.typed(name)));
        } catch (IOException failed) {
            return Statement.failed(sitting.outside().told(failed));
        }
    }

    private static Answer restore(Keeper keeper, Path file, Sitting sitting) {
        try {
            int count = keeper.bringBack(file);
            return Statement.of(
                    count == 0
                            ? Phrase.sentence("All of it was here already.")
                            : Phrase.counted(
                                    count,
                                    "{0} answer came back; what was here stays.",
                                    "{0} answers came back; what was here stays.",
                                    count));
        } catch (IOException failed) {
            return Statement.failed(sitting.outside().told(failed));
        }
    }
}
