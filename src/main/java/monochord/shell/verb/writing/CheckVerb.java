package monochord.shell.verb.writing;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.option;
import static monochord.shell.sentence.FormPart.takes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.classroom.AssignmentCheck;
import monochord.classroom.AssignmentReader;
import monochord.lesson.Fault;
import monochord.lesson.LessonPart;
import monochord.lesson.Reading;
import monochord.lesson.read.Library;
import monochord.lesson.read.UnmarkedNames;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.song.Song;
import monochord.song.SongFile;
import monochord.song.SongReader;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.course.CheckAnswer;
import monochord.view.course.CheckAnswer.Checked;

/** Finds the faults of lesson and song files. */
final class CheckVerb implements Verb {
    @Override
    public String word() {
        return "check";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.TEACHING,
                        Phrase.of("find the faults of lessons, songs and assignments; alone, of all lessons here"))
                .form(may(takes(Value.LESSON_FILES)), may(option("trust")))
                .examples("check my-lesson.md", "check my-song.md", "check homework.md");
    }

    @Override
    public boolean readsMusic() {
        return false;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.SentencePart named = sentence.body();
        return new CheckAnswer(
                named.isEmpty() ? all(sitting.course().library()) : named(named, sentence.has("trust"), sitting));
    }

    private static List<Checked> all(Library library) {
        return Stream.concat(lessons(library), tunes(library)).toList();
    }

    private static Stream<Checked> tunes(Library library) {
        return library.tunes().files().stream()
                .map(file -> song(file.toString(), file).orElseGet(() -> noSong(file)));
    }

    private static Checked noSong(Path file) {
        Fault fault = new Fault(
                file.toString(),
                1,
                1,
                Phrase.of("this is no song"),
                Phrase.of(
                        "write a head with {0} and {1}, and a section", Phrase.typed("key:"), Phrase.typed("metre:")));
        return new Checked(file.toString(), List.of(fault), Files.isReadable(file));
    }

    private static Stream<Checked> lessons(Library library) {
        return library.entries().stream()
                .map(entry -> new Checked(
                        entry.file().toString(),
                        withNames(
                                library.read(entry).faults(),
                                entry.file(),
                                entry.file().toString()),
                        true));
    }

    private static List<Checked> named(Sentence.SentencePart part, boolean trust, Sitting sitting) {
        List<Checked> checked = new ArrayList<>();
        for (String name : NotebookFiles.named(part, sitting)) {
            Path file = part.read(text -> sitting.outside().file(name));
            checked.add(song(name, file)
                    .or(() -> assignment(name, file))
                    .orElseGet(() -> checked(name, file, trust, sitting)));
        }
        return checked;
    }

    /** The faults of an assignment or what is handed in for one; none if the file is neither. */
    private static Optional<Checked> assignment(String name, Path file) {
        return AssignmentReader.isAssignment(file)
                ? Optional.of(new Checked(name, AssignmentCheck.faults(file, name), true))
                : Optional.empty();
    }

    /** The faults of a song; none if the file is none. */
    private static Optional<Checked> song(String name, Path file) {
        try {
            String text = SongFile.text(file, name);
            return SongFile.isSong(text) ? Optional.of(song(name, SongReader.read(text))) : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static Checked song(String name, Song song) {
        List<Fault> faults = song.faults().stream()
                .map(fault -> new Fault(name, fault.line(), fault.column(), fault.what(), fault.instead()))
                .toList();
        return new Checked(name, faults, true);
    }

    private static Checked checked(String name, Path file, boolean trust, Sitting sitting) {
        Reading found = sitting.course().library().checkBeside(file);
        Reading reading = new Reading(
                found.lesson(),
                withNames(
                        NotebookFiles.named(found.faults(), sitting),
                        file,
                        sitting.outside().named(file.toString())));
        List<LessonPart.Code> code = LessonJavaTrial.code(reading);
        if (code.isEmpty() || LessonJavaTrial.mayRun(file, trust, sitting)) {
            return new Checked(name, LessonJavaTrial.faults(name, reading, sitting), Files.isReadable(file));
        }
        List<Integer> untried = code.stream().map(LessonPart.Code::line).toList();
        return new Checked(name, reading.faults(), Files.isReadable(file), untried);
    }

    /** These faults, and the names of notes that are not marked. */
    private static List<Fault> withNames(List<Fault> faults, Path file, String path) {
        return Stream.concat(faults.stream(), UnmarkedNames.in(file, path).stream())
                .sorted(Fault.IN_ORDER)
                .toList();
    }
}
