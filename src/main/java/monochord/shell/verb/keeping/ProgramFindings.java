package monochord.shell.verb.keeping;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.cell.Confinement;
import monochord.text.Phrase;

/** The program itself and the Java it runs on. */
final class ProgramFindings {
    private static final String ARCHIVE = "-XX:SharedArchiveFile=";

    private ProgramFindings() {}

    static List<DoctorFinding> all() {
        return List.of(
                DoctorFinding.well(Phrase.of("program"), "program", Version.told()), compiler(), cells(), archive());
    }

    private static DoctorFinding compiler() {
        Phrase what = Phrase.of("Java lines");
        boolean starts = isThere(Path.of(System.getProperty("java.home"), "bin", "java"))
                || isThere(Path.of(System.getProperty("java.home"), "bin", "java.exe"));
        return ModuleLayer.boot().findModule("jdk.jshell").isPresent() && starts
                ? DoctorFinding.well(what, "java", Phrase.of("there: lines of Java can be run at the prompt"))
                : DoctorFinding.missing(
                        what,
                        "java",
                        Phrase.of("missing: this Java has no compiler, or cannot be started anew"),
                        Phrase.sentence("A whole JDK lets lines of Java be run; all else does without."));
    }

    /** What somebody else's Java could do, were it run. */
    private static DoctorFinding cells() {
        Phrase what = Phrase.of("Java kept apart");
        return DoctorFinding.well(
                what,
                "cells",
                Confinement.isOffered()
                        ? Phrase.of(
                                "without network, out of sight of other programs, at most {0} processes",
                                Confinement.PROCESSES)
                        : Phrase.of("in a program of its own; this system offers no way to take the network from it"));
    }

    /** With it the classes are at hand when the program starts. */
    private static DoctorFinding archive() {
        Phrase what = Phrase.of("quick start");
        Optional<String> named = ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(argument -> argument.startsWith(ARCHIVE))
                .map(argument -> argument.substring(ARCHIVE.length()))
                .findFirst();
        return named.filter(ProgramFindings::isThere).isPresent()
                ? DoctorFinding.well(what, "archive", Phrase.of("there: the classes are at hand"))
                : DoctorFinding.well(
                        what, "archive", Phrase.of("not yet: the next start may be quicker than this one"));
    }

    private static boolean isThere(String path) {
        try {
            return isThere(Path.of(path));
        } catch (InvalidPathException odd) {
            return false;
        }
    }

    private static boolean isThere(Path file) {
        return Files.isReadable(file);
    }
}
