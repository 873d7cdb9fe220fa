package monochord.shell.verb.writing;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.file.Digest;
import monochord.file.WholeFile;
import monochord.notebook.Notebook;
import monochord.notebook.NotebookReader;
import monochord.shell.replay.Replay;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;

/** Writes the sitting so far into a file, as a notebook. */
final class SaveVerb implements Verb {
    @Override
    public String word() {
        return "save";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("save the sitting so far as a notebook; alone, into the file it has"))
                .form(may(takes(Value.FILE)), may(option(NewFile.OVER)))
                .examples("save evening.md", "save evening.md --over");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sitting.journal().isEmpty()) {
            return new NotebookRemark(
                    new Statement(List.of(Phrase.of("Nothing has been typed or noted yet.")), Answer.NO));
        }
        String name = NotebookFiles.name(sentence.body().text());
        Path file = name.isEmpty()
                ? own(sentence, sitting)
                : sentence.body().read(text -> sitting.outside().file(name));
        String shown = name.isEmpty() ? file.toString() : name;
        if (Files.isRegularFile(file) && isOwn(file, sitting)) {
            return save(file, shown, sitting);
        }
        return NewFile.unlessThere(
                List.of(new NewFile.NamedPath(shown, file)), sentence, sitting, () -> save(file, shown, sitting));
    }

    private static Path own(Sentence sentence, Sitting sitting) {
        return sitting.journal()
                .file()
                .orElseThrow(() ->
                        Unreadable.because(sentence.whole(), 0, "a file name", "a name is needed", "save evening.md"));
    }

    private static boolean isOwn(Path file, Sitting sitting) {
        return sitting.journal().isOwn(file, NotebookReader.read(file).digest());
    }

    private static Answer save(Path file, String shown, Sitting sitting) {
        Notebook notebook = sitting.journal().notebook();
        String content = notebook.toString();
        try {
            WholeFile.write(file, part -> Files.writeString(part, content));
            trust(notebook, content, shown, sitting);
        } catch (IOException failed) {
            return new NotebookRemark(Statement.failed(sitting.outside().told(failed)));
        }
        sitting.journal().saved(file, content);
        return new NotebookRemark(
                new Saved(shown, notebook.exchanges().size(), sitting.journal().notes()));
    }

    /** The person's own Java, typed here, needs no yes when it comes back. */
    private static void trust(Notebook notebook, String content, String shown, Sitting sitting) throws IOException {
        if (sitting.cells().haveRun()
                && !sitting.journal().isForeign()
                && !Replay.of(notebook, sitting, false).skipped().isEmpty()) {
            sitting.outside().trust().trust(Digest.of(content.getBytes(StandardCharsets.UTF_8)), shown);
        }
    }
}
