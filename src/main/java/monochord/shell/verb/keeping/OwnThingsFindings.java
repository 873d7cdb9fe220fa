package monochord.shell.verb.keeping;

import java.io.IOException;
import java.io.UncheckedIOException;
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

    static List<DoctorFinding> all(Sitting sitting) {
        List<DoctorFinding> findings = new ArrayList<>();
        Optional<Path> place = sitting.study().keeper().place();
        place.ifPresent(home -> findings.addAll(kept(home)));
        findings.add(lessons(sitting.course().library()));
        return findings;
    }

    private static List<DoctorFinding> kept(Path home) {
        Phrase what = Phrase.of("your things");
        Phrase shown = Phrase.typed(home.toAbsolutePath().normalize().toString());
        try {
            OwnerOnly.folder(home);
            int closed = close(home);
            if (!Files.isWritable(home)) {
                return List.of(unwritable(what, shown));
            }
            return List.of(privacy(what, home, shown, closed), space(home));
        } catch (IOException failed) {
            return List.of(DoctorFinding.broken(
                    what,
                    "home",
                    Failure.told(failed),
                    Phrase.sentence("{0} must be a folder that you can write to.", shown)));
        }
    }

    /** Closes to others what lies in the folder and in those within, and says how much was open. */
    private static int close(Path home) throws IOException {
        int closed = 0;
        try (Stream<Path> files = Files.walk(home, 2)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                boolean wasOpen = OwnerOnly.isOpen(file);
                OwnerOnly.file(file);
                closed += wasOpen && !OwnerOnly.isOpen(file) ? 1 : 0;
            }
        } catch (UncheckedIOException unlisted) {
            throw unlisted.getCause();
        }
        return closed;
    }

    /** A folder that others may look into stays as it is: somebody may share it on purpose. */
    private static DoctorFinding privacy(Phrase what, Path home, Phrase shown, int closed) throws IOException {
        if (closed > 0) {
            Phrase state = Phrase.counted(
                    closed,
                    "{1}; {0} file was open to others and is yours alone now",
                    "{1}; {0} files were open to others and are yours alone now",
                    closed,
                    shown);
            return DoctorFinding.mended(what, "home", state);
        }
        Phrase state = OwnerOnly.isOpen(home)
                ? Phrase.of("{0}; others may see what lies there, only you can read it", shown)
                : Phrase.of("{0}, for you alone", shown);
        return DoctorFinding.well(what, "home", state);
    }

    private static DoctorFinding unwritable(Phrase what, Phrase home) {
        return DoctorFinding.missing(
                what,
                "home",
                Phrase.of("{0} cannot be written", home),
                Phrase.sentence(
                        "Answers are not kept until it can; {0} names another folder.",
                        Phrase.typed("MONOCHORD_HOME")));
    }

    /** Asked of the folder itself: in a container or behind chroot there may be no mount point to ask. */
    private static DoctorFinding space(Path home) {
        long free = home.toFile().getUsableSpace();
        Phrase what = Phrase.of("room on the disk");
        Phrase state = Phrase.of("{0} MB", Phrase.typed(Long.toString(free / MEGABYTE)));
        return free >= LITTLE
                ? DoctorFinding.well(what, "space", state)
                : DoctorFinding.missing(
                        what, "space", state, Phrase.sentence("Answers, drafts and recordings may soon not fit."));
    }

    private static DoctorFinding lessons(Library library) {
        Phrase what = Phrase.of("lessons");
        int count = library.entries().size();
        return count > 0
                ? DoctorFinding.well(what, "lessons", Phrase.counted(count, "{0} lesson", "{0} lessons", count))
                : DoctorFinding.missing(
                        what,
                        "lessons",
                        Phrase.of("none were found"),
                        Phrase.sentence("{0} names the folder with the books.", Phrase.typed("MONOCHORD_LESSONS")));
    }
}
