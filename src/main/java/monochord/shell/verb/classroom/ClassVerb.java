package monochord.shell.verb.classroom;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.fixed;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.orAgain;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import monochord.classroom.PupilCode;
import monochord.classroom.overview.ClassOverview;
import monochord.classroom.overview.NextTopic;
import monochord.paper.ClassHandout;
import monochord.paper.Handout;
import monochord.paper.HandoutPages;
import monochord.paper.HandoutWeb;
import monochord.record.ClassRecord;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.paper.PaperFiles;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.NotebookRemark;
import monochord.view.Statement;
import monochord.view.classroom.ClassOverviewAnswer;
import monochord.view.classroom.OnePupilAnswer;

/** Shows what a class can do in which key, its mistakes, and what to teach next; and keeps its list and record. */
final class ClassVerb implements Verb {
    private static final int TOPICS = 3;

    @Override
    public String word() {
        return "class";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.TEACHING,
                        Phrase.of("see what a class can do in which key, its mistakes, and what to teach next"))
                .form(may(takes(List.of(Value.CODE), "GROUP")), may(clause(ClassSentence.OVER, Value.WEEKS)))
                .form(PaperFiles.form())
                .form(
                        orAgain(),
                        fixed(ClassKeeping.FORGET),
                        takes(Value.CODE),
                        orAgain(),
                        fixed(ClassKeeping.LIST),
                        orAgain(),
                        fixed(ClassKeeping.COPY),
                        takes(Value.FILE),
                        orAgain(),
                        fixed(ClassKeeping.JOIN),
                        takes(Value.FILE))
                .examples(
                        "class",
                        "class over 2 weeks",
                        "class 7b-04",
                        "class --pdf wall.pdf",
                        "class list",
                        "class copy thursday.db",
                        "class join thursday.db",
                        "class forget 7b-04");
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        try {
            OwnClass own = OwnClass.of(sitting);
            Optional<ClassRecord> record = own.record();
            if (record.isEmpty()) {
                return Statement.of(Phrase.sentence("No record is kept in this sitting."));
            }
            Optional<Answer> kept = new ClassKeeping(own, sentence, sitting).answer();
            return kept.isPresent() ? new NotebookRemark(kept.get()) : view(own, record.get(), sentence, sitting);
        } catch (IOException failed) {
            return Statement.failed(sitting.outside().told(failed));
        }
    }

    private static Answer view(OwnClass own, ClassRecord record, Sentence sentence, Sitting sitting)
            throws IOException {
        ClassSentence asked =
                ClassSentence.read(sentence, own.list(), sitting.study().now());
        ClassOverview overview = asked.overview(record);
        List<NextTopic> next = NextTopic.all(overview).stream().limit(TOPICS).toList();
        if (PaperFiles.isWanted(sentence)) {
            return paper(ClassHandout.of(overview, next), sentence, sitting);
        }
        Optional<PupilCode> one = asked.pupil();
        return one.isPresent()
                ? new OnePupilAnswer(
                        one.get().text(),
                        overview,
                        record.knowledge(one.get().text()),
                        sitting.study().now())
                : new ClassOverviewAnswer(overview, asked.over(), next);
    }

    private static Answer paper(Handout handout, Sentence sentence, Sitting sitting) {
        PaperFiles files = new PaperFiles(sentence, sitting);
        files.page(() -> HandoutWeb.of(handout, PaperFiles.reader(sitting)))
                .pages(handout.title(), size -> HandoutPages.of(handout, size, PaperFiles.reader(sitting)));
        return NewFile.write(
                files.files(),
                sentence,
                sitting,
                Statement.of(Phrase.of("Written: {0}", Phrase.typed(String.join(", ", files.names())))));
    }
}
