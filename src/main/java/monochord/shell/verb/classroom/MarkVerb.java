package monochord.shell.verb.classroom;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.classroom.Assignment;
import monochord.classroom.AssignmentReader;
import monochord.classroom.HandInFiles;
import monochord.classroom.TeachersFiles;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Sentence.SentencePart;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.classroom.MarkAnswer;

/** Marks what pupils hand in. */
final class MarkVerb implements Verb {
    private static final String EXAMPLE = "mark handed-in";
    private static final String WITH = "with";

    @Override
    public String word() {
        return "mark";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.TEACHING,
                        Phrase.of(
                                "mark what was handed in, files or a folder; with a code, type in what stands on paper"))
                .form(takes(Value.FILES), may(clause(WITH, Value.FILE)), may(clause(HomeworkStart.AS, Value.CODE)))
                .form(MarkedFiles.form())
                .examples(
                        EXAMPLE,
                        "mark 7b-04.md with homework.md",
                        "mark homework.md as 7b-05",
                        "mark handed-in --feedback feedback --csv marks.csv");
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (sentence.clause(HomeworkStart.AS).isPresent()) {
            return HomeworkStart.fromPaper(sentence, sitting);
        }
        Map<Path, String> named = named(sentence.body(), sitting);
        for (Path file : named.keySet()) {
            if (!Files.exists(file) && !Files.isSymbolicLink(file)) {
                return Statement.failed(Phrase.of("{0}: there is no such file", Phrase.typed(named.get(file))));
            }
        }
        Optional<Assignment> with = sentence.clause(WITH).map(part -> part.read(text -> assignment(part, sitting)));
        return marked(named, with, sentence, sitting);
    }

    /**
     * @param named files and folders, each with its name as it was typed
     * @param with an assignment that goes before those among the files
     */
    static Answer marked(Map<Path, String> named, Optional<Assignment> with, Sentence sentence, Sitting sitting) {
        try {
            OwnClass own = OwnClass.of(sitting);
            TeachersFiles teacher =
                    TeachersFiles.of(with.stream().toList(), own.list().codes());
            HandInFiles files = HandInFiles.of(
                    List.copyOf(named.keySet()),
                    teacher,
                    path -> named.getOrDefault(Path.of(path), told(path, sitting)));
            return files.count() == 0
                    ? Statement.of(Phrase.sentence("Nothing was handed in there."))
                    : new MarkedFiles(sentence, sitting, files)
                            .write(new MarkAnswer(files, new MarksKept(own, sitting)));
        } catch (IOException unreadable) {
            return Statement.failed(sitting.outside().told(unreadable));
        }
    }

    /** One name if the whole text names a file or a folder, for names may hold spaces; else each word is one. */
    private static Map<Path, String> named(SentencePart body, Sitting sitting) {
        if (body.isEmpty()) {
            throw Unreadable.because(body.text(), 0, "something to mark", "expected a file or a folder", EXAMPLE);
        }
        Path whole = body.read(sitting.outside()::file);
        if (Files.exists(whole)) {
            return Map.of(whole, body.text());
        }
        Map<Path, String> files = new LinkedHashMap<>();
        Stream.of(body.text().split("\\s+"))
                .forEach(name -> files.put(body.read(text -> sitting.outside().file(name)), name));
        return files;
    }

    private static String told(String path, Sitting sitting) {
        return sitting.outside().named(path);
    }

    private static Assignment assignment(SentencePart part, Sitting sitting) {
        Path file = part.read(sitting.outside()::file);
        Optional<Assignment> assignment =
                AssignmentReader.read(file, part.text()).assignment();
        return assignment.orElseThrow(() -> Unreadable.because(
                part.text(), 0, "an assignment", Clause.of("its file cannot be read; check says why"), EXAMPLE));
    }
}
