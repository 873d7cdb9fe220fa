package monochord.shell.verb.writing;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.course.Course;
import monochord.file.WholeFile;
import monochord.lesson.Lesson;
import monochord.lesson.read.LibraryEntry;
import monochord.notebook.NotebookReader;
import monochord.notebook.NotebookReading;
import monochord.paper.HandoutWeb;
import monochord.paper.LessonHandout;
import monochord.shell.publish.Publication;
import monochord.shell.replay.Replay;
import monochord.shell.replay.ReplayAnswer;
import monochord.shell.replay.Replayed;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.ReplaySandbox;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.theory.note.Clause;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;
import monochord.view.notebook.PublishAnswer;

/** Makes a notebook into a page for a browser. */
final class PublishVerb implements Verb {
    private static final String HTML = "html";
    private static final String TRUST = "trust";
    private static final String EXAMPLE = "publish evening.md --html evening.html";

    @Override
    public String word() {
        return "publish";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.WRITING,
                        Phrase.of("make a notebook, or a lesson, into one page with pictures and sound"))
                .form(
                        takes(Value.FILE, Value.LESSON),
                        option(HTML, Value.OUT),
                        may(option(TRUST)),
                        may(option(NewFile.OVER)))
                .examples(EXAMPLE, "publish 5.2 --html lesson.html");
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.SentencePart said = sentence.body();
        if (said.isEmpty() || sentence.option(HTML).isEmpty()) {
            Clause missing = Clause.of(said.isEmpty() ? "a name is needed" : "it has to be said where the page goes");
            throw Unreadable.because(
                    sentence.whole(), sentence.whole().length(), "a notebook to publish", missing, EXAMPLE);
        }
        if (sitting.outside().seal().filter(ReplaySandbox::isDeepest).isPresent()) {
            return new NotebookRemark(Statement.failed(Phrase.of("Nothing is published out of a replay in a replay.")));
        }
        Optional<LibraryEntry> lesson = sitting.course().library().find(said.text());
        if (lesson.isPresent() && !Files.exists(sitting.outside().file(said.text()))) {
            return new NotebookRemark(lesson(lesson.get(), sentence, sitting));
        }
        String name = NotebookFiles.name(said.text());
        Path file = said.read(text -> sitting.outside().file(name));
        Sentence.SentencePart out = sentence.option(HTML).get();
        NewFile.NamedPath page = new NewFile.NamedPath(out.text(), out.read(sitting.outside()::file));
        NewFile.NamedPath notebook = new NewFile.NamedPath(name, file);
        return new NotebookRemark(NewFile.unlessThere(
                List.of(page), sentence, sitting, () -> publish(notebook, page, sentence.has(TRUST), sitting)));
    }

    /** In the key of the sitting; what would sound is left out. */
    private static Answer lesson(LibraryEntry entry, Sentence sentence, Sitting sitting) {
        Lesson lesson = sitting.course()
                .library()
                .read(entry)
                .lesson()
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(), 0, "a lesson", "its file cannot be read; check says why", EXAMPLE));
        Reader reader = Reader.of(Signs.MUSIC.with(sitting.naming()));
        NewFile page = NewFile.text(
                        sentence,
                        HTML,
                        sitting,
                        () -> HandoutWeb.of(LessonHandout.of(lesson, Course.majorKey(sitting.key())), reader))
                .orElseThrow();
        return NewFile.writeNoted(
                List.of(page), sentence, sitting, Statement.of(Phrase.of("Written: {0}", Phrase.typed(page.name()))));
    }

    private static Answer publish(
            NewFile.NamedPath notebook, NewFile.NamedPath page, boolean saidYes, Sitting sitting) {
        NotebookReading reading = NotebookReader.read(notebook.path());
        if (!reading.isSound()) {
            return new ReplayAnswer(List.of(
                    new ReplayAnswer.ReplayedFile(notebook.name(), reading.faults(), null, false, Phrase.NOTHING)));
        }
        boolean asked = saidYes && sitting.outside().seal().isEmpty();
        boolean trusted = asked || sitting.outside().trust().isTrusted(notebook.path(), reading.digest());
        try {
            Replayed replayed = Replay.of(reading.notebook().orElseThrow(), sitting, trusted);
            Publication publication = Publication.of(replayed, sitting.outside().progress());
            WholeFile.write(
                    page.path(),
                    part -> Files.writeString(part, publication.page().write()));
            return new PublishAnswer(
                    page.name(),
                    publication.recordings(),
                    publication.leftOut(),
                    replayed.differences().size(),
                    replayed.skipped().size());
        } catch (IOException failed) {
            return Statement.failed(sitting.outside().told(failed));
        }
    }
}
