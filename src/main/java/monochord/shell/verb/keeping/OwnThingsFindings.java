package monochord.shell.verb.keeping;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.file.OwnerOnly;
import monochord.lesson.read.Library;
import monochord.shell.sitting.Sitting;
import monochord.text.Failure;
import monochord.text.Phrase;

/** A learner's own things, and the lessons. What others might read is closed to them. */
final class OwnThingsFindings {
    private static final long MEGABYTE = 1 << 20;
    /** Less than this, and a recording or a long record may not fit. */
    private static final long LITTLE = 50 * MEGABYTE;

    private OwnThingsFindings() {}

    static List<Finding> all(Sitting sitting) {
        List<Finding> findings = new ArrayList<>();
        Optional<Path> place = sitting.study().keeper().place();
        place.ifPresent(home -> findings.addAll(kept(home)));
        findings.add(lessons(sitting.course().library()));
        return findings;
    }

    private static List<Finding> kept(Path home) {
        Phrase what = Phrase.of("your things");
        Phrase shown = Phrase.typed(home.toAbsolutePath().normalize().toString());
        try {
            OwnerOnly.folder(home);
            try (Stream<Path> files = Files.list(home)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    OwnerOnly.file(file);
                }
            }
            if (!Files.isWritable(home)) {
                return List.of(unwritable(what, shown));
            }
            return List.of(Finding.well(what, "home", Phrase.of("{0}, for you alone", shown)), space(home));
        } catch (IOException failed) {
            return List.of(new Finding(
                    what,
                    "home",
                    Failure.told(failed),
                    false,
                    Phrase.sentence("{0} must be a folder that you can write to.", shown)));
        }
    }

    private static Finding unwritable(Phrase what, Phrase home) {
        return Finding.missing(
                what,
                "home",
                Phrase.of("{0} cannot be written", home),
                Phrase.sentence(
                        "Answers are not kept until it can; {0} names another folder.",
                        Phrase.typed("MONOCHORD_HOME")));
    }

    private static Finding space(Path home) throws IOException {
        long free = Files.getFileStore(home).getUsableSpace();
        Phrase what = Phrase.of("room on the disk");
        Phrase state = Phrase.of("{0} MB", Phrase.typed(Long.toString(free / MEGABYTE)));
        return free >= LITTLE
                ? Finding.well(what, "space", state)
                : Finding.missing(
                        what, "space", state, Phrase.sentence("Answers, drafts and recordings may soon not fit."));
    }

    private static Finding lessons(Library library) {
        Phrase what = Phrase.of("lessons");
        int count = library.entries().size();
        return count > 0
                ? Finding.well(what, "lessons", Phrase.counted(count, "{0} lesson", "{0} lessons", count))
                : Finding.missing(
                        what,
                        "lessons",
                        Phrase.of("none were found"),
                        Phrase.sentence("{0} names the folder with the books.", Phrase.typed("MONOCHORD_LESSONS")));
    }
}
