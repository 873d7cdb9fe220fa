package monochord.shell.verb.classroom;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import monochord.classroom.AssignmentReader;
import monochord.classroom.AssignmentReading;
import monochord.classroom.HandIn;
import monochord.classroom.PupilCode;
import monochord.shell.sentence.NewFile;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Sentence.SentencePart;
import monochord.shell.sitting.HomeworkTeaching;
import monochord.shell.sitting.HomeworkTeaching.HomeworkTask;
import monochord.shell.sitting.Sitting;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.course.CheckAnswer;

/** Begins an assignment from its file: for a pupil, or for a teacher who types in what stands on paper. */
public final class HomeworkStart {
    /** The word before a pupil's code. */
    public static final String AS = "as";

    private static final String EXAMPLE = "learn homework.md as 7b-04";

    private HomeworkStart() {}

    /** Whether what is named is the file of an assignment. */
    public static boolean isFile(SentencePart named, Sitting sitting) {
        return named.text().endsWith(".md")
                || named.text().contains(".") && Files.isRegularFile(named.read(sitting.outside()::file));
    }

    /**
     * Has the pupil do it.
     *
     * @throws Unreadable if nobody's code is named
     */
    public static Answer alone(Sentence sentence, Sitting sitting) {
        return begin(sentence, sitting, work -> HomeworkTeaching.begin(work, sitting));
    }

    /** Has the teacher type in what stands on paper, and marks it in the end. */
    static Answer fromPaper(Sentence sentence, Sitting sitting) {
        return begin(
                sentence,
                sitting,
                work -> HomeworkTeaching.fromPaper(
                        work,
                        file -> MarkVerb.marked(
                                Map.of(file, work.name()), Optional.of(work.given()), sentence, sitting),
                        sitting));
    }

    private static Answer begin(Sentence sentence, Sitting sitting, Function<HomeworkTask, Answer> beginning) {
        SentencePart named = sentence.body();
        Path file = named.read(sitting.outside()::file);
        AssignmentReading reading = AssignmentReader.read(file, named.text());
        if (reading.assignment().isEmpty() || !reading.faults().isEmpty()) {
            return new CheckAnswer(
                    List.of(new CheckAnswer.Checked(named.text(), reading.faults(), Files.isReadable(file))));
        }
        PupilCode code = sentence.clause(AS)
                .map(part -> part.read(PupilCode::parse))
                .or(() -> reading.handIn().flatMap(HandIn::code))
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(),
                        sentence.whole().length(),
                        "an assignment to be done",
                        Clause.of("it has to be said by whom, with the code your teacher gave you"),
                        EXAMPLE));
        String name =
                reading.handIn().flatMap(HandIn::code).filter(code::equals).isPresent()
                        ? named.text()
                        : NewFile.behind(named.text(), code.text());
        Path handIn = named.read(text -> sitting.outside().file(name));
        return beginning.apply(new HomeworkTask(reading.assignment().get(), code, handIn, name));
    }
}
