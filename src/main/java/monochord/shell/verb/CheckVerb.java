package monochord.shell.verb;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.shell.answer.Answer;
import monochord.shell.answer.CheckAnswer;
import monochord.shell.answer.CheckAnswer.Checked;
import monochord.shell.sitting.Sitting;
import monochord.theory.Unreadable;

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
    public boolean readsMusic() {
        return false;
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
        Path folder = sitting.folder();
        Library library = sitting.course().library();
        List<Checked> checked = new ArrayList<>();
        boolean whole = part.read(text -> path(text, folder)).toFile().isFile();
        for (String name : whole ? List.of(part.text()) : List.of(part.text().split("\\s+"))) {
            Path file = part.read(text -> path(name, folder));
            checked.add(new Checked(name, library.checkBeside(file).faults(), Files.isReadable(file)));
        }
        return checked;
    }

    private static Path path(String name, Path folder) {
        try {
            return folder.resolve(name);
        } catch (InvalidPathException invalid) {
            throw Unreadable.because(
                    name, 0, "a file name", "it holds a character no name may hold", "check my-lesson.md");
        }
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return sitting.course().library().entries().stream()
                .map(LibraryEntry::file)
                .map(Path::toString)
                .toList();
    }
}
