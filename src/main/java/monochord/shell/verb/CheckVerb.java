package monochord.shell.verb;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.shell.answer.Answer;
import monochord.shell.answer.CheckAnswer;
import monochord.shell.answer.CheckAnswer.Checked;
import monochord.shell.sitting.Sitting;

/** Finds the faults of lesson files. */
final class CheckVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                        "check",
                        Usage.Topic.TEACHING,
                        "check [FILE …]",
                        "find the faults of lesson files; alone, of all lessons here",
                        "check my-lesson.md")
                .withSmallWords();
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Sentence.Part named = sentence.body();
        return new CheckAnswer(named.isEmpty() ? all(sitting.course().library()) : named(named, sitting));
    }

    private static List<Checked> all(Library library) {
        return library.entries().stream()
                .map(entry ->
                        new Checked(entry.file().toString(), library.read(entry).faults(), true))
                .toList();
    }

    /** One file if the whole text names one, for names may hold spaces; else a file for each word. */
    private static List<Checked> named(Sentence.Part part, Sitting sitting) {
        List<Checked> checked = new ArrayList<>();
        boolean whole = part.read(sitting.outside()::file).toFile().isFile();
        for (String name : whole ? List.of(part.text()) : List.of(part.text().split("\\s+"))) {
            Path file = part.read(text -> sitting.outside().file(name));
            checked.add(new Checked(name, Library.check(file).faults(), Files.isReadable(file)));
        }
        return checked;
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return sitting.course().library().entries().stream()
                .map(LibraryEntry::file)
                .map(Path::toString)
                .toList();
    }
}
