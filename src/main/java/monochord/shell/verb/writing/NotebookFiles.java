package monochord.shell.verb.writing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.lesson.Fault;
import monochord.shell.sentence.Sentence;
import monochord.shell.sitting.Sitting;

/** The names of files in a sentence. */
final class NotebookFiles {
    private static final String ENDING = ".md";

    private NotebookFiles() {}

    /** With the ending of a notebook, if the name has no ending of its own. */
    static String name(String said) {
        String last = said.substring(said.lastIndexOf('/') + 1);
        return said.isEmpty() || last.isEmpty() || last.indexOf('.') >= 0 ? said : said + ENDING;
    }

    /** The faults with the names of their files as they were typed. */
    static List<Fault> named(List<Fault> faults, Sitting sitting) {
        return faults.stream()
                .map(fault -> new Fault(
                        sitting.outside().named(fault.path()),
                        fault.line(),
                        fault.column(),
                        fault.what(),
                        fault.instead()))
                .toList();
    }

    /** One name if the whole text names a file, for names may hold spaces; else each word is one. */
    static List<String> named(Sentence.SentencePart part, Sitting sitting) {
        Path whole = part.read(sitting.outside()::file);
        return Files.isRegularFile(whole)
                ? List.of(part.text())
                : List.of(part.text().split("\\s+"));
    }
}
