package monochord.shell.verb.writing;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.notebook.Notebook;
import monochord.notebook.NotebookReader;
import monochord.notebook.NotebookReading;
import monochord.shell.journal.Drafts;
import monochord.shell.replay.OpenAnswer;
import monochord.shell.replay.Replay;
import monochord.shell.replay.Replayed;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.ReplaySandbox;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.NoteNaming;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;
import monochord.view.course.CheckAnswer;

/** Opens a notebook, brings the sitting to where it ends, and goes on writing behind it. */
final class OpenVerb implements Verb {
    private static final String DRAFT = "draft";
    private static final String TRUST = "trust";

    @Override
    public String word() {
        return "open";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("open a notebook and go on where it ends; draft is the last one not saved"))
                .form(takes(List.of(Value.FILE), "draft"), may(option(TRUST)))
                .examples("open evening.md", "open draft");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.SentencePart said = sentence.body();
        if (said.isEmpty()) {
            throw Unreadable.because(sentence.whole(), 0, "a notebook", "a name is needed", "open evening.md");
        }
        if (sitting.outside().seal().filter(ReplaySandbox::isDeepest).isPresent()) {
            return new NotebookRemark(Statement.failed(Phrase.of("A notebook in a notebook opens no third.")));
        }
        if (said.text().equals(DRAFT)) {
            return draft(sentence.has(TRUST), sitting);
        }
        String name = NotebookFiles.name(said.text());
        Path file = said.read(text -> sitting.outside().file(name));
        NotebookReading reading = NotebookReader.read(file);
        return reading.isSound()
                ? open(new Opened(name, file, reading, false), sentence.has(TRUST), sitting)
                : faults(name, file, reading, sitting);
    }

    private static Answer faults(String name, Path file, NotebookReading reading, Sitting sitting) {
        return new NotebookRemark(new CheckAnswer(List.of(new CheckAnswer.Checked(
                name, NotebookFiles.named(reading.faults(), sitting), Files.isReadable(file)))));
    }

    /** A notebook that can be opened, and whether it is a draft of ours. */
    private record Opened(String name, Path file, NotebookReading reading, boolean isDraft) {
        Notebook notebook() {
            Notebook notebook = reading.notebook().orElseThrow();
            return isDraft ? Drafts.asNotebook(notebook) : notebook;
        }

        boolean isTrusted(Sitting sitting) {
            return isDraft && !Drafts.isForeign(file)
                    || sitting.outside().trust().isTrusted(file, reading.digest());
        }
    }

    /** What a kill broke off in the middle of a line is no fault of a draft. */
    private static Answer draft(boolean trust, Sitting sitting) {
        Optional<Path> file = sitting.outside().drafts().flatMap(Drafts::latest);
        if (file.isEmpty()) {
            return new NotebookRemark(Statement.failed(Phrase.of("There is no draft that was not saved.")));
        }
        NotebookReading reading = NotebookReader.read(file.get());
        return reading.notebook().isPresent()
                ? open(new Opened(DRAFT, file.get(), reading, true), trust, sitting)
                : faults(DRAFT, file.get(), reading, sitting);
    }

    private static Answer open(Opened opened, boolean trust, Sitting sitting) {
        try {
            if (trust) {
                sitting.outside().trust().trust(opened.reading.digest(), opened.name);
            }
            boolean trusted = opened.isTrusted(sitting);
            Notebook notebook = opened.notebook();
            NoteNaming before = sitting.naming();
            Replayed replayed = Replay.into(sitting, notebook, trusted);
            List<String> foreign = replayed.skipped().stream()
                    .map(turn -> turn.written().text())
                    .toList();
            sitting.journal().goOnFrom(notebook, opened.file, opened.reading.digest(), !foreign.isEmpty());
            if (opened.isDraft && sitting.journal().secure().isEmpty()) {
                Files.deleteIfExists(opened.file);
            }
            return new NotebookRemark(new OpenAnswer(
                    opened.name,
                    replayed,
                    sitting.screenLines(),
                    foreign,
                    ask(opened, foreign, sitting),
                    called(before, sitting.naming())));
        } catch (IOException failed) {
            return new NotebookRemark(Statement.failed(sitting.outside().told(failed)));
        }
    }

    private static Phrase called(NoteNaming before, NoteNaming now) {
        return before == now
                ? Phrase.NOTHING
                : Phrase.of(
                        "Notes go by {0} names in it; {1} changes that.",
                        Phrase.typed(now.toString()), Phrase.typed("notes " + before));
    }

    /** Asks the person, or says what a script has to say. */
    private static Phrase ask(Opened opened, List<String> foreign, Sitting sitting) {
        if (foreign.isEmpty() || !sitting.isAttended()) {
            return Phrase.of("{0} runs it.", Phrase.typed("open " + opened.name + " --trust"));
        }
        sitting.outside()
                .askConsent(
                        () -> open(opened, true, sitting),
                        () -> new NotebookRemark(Statement.of(Phrase.sentence("Nothing of it was run."))));
        return Phrase.of("Type yes to trust this file, as it is, and run it. Any other line leaves it alone.");
    }
}
