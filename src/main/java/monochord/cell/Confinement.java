package monochord.cell;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What the system itself keeps from the JVM of a cell, beside what that JVM keeps from its snippets. Linux offers a world
 * without network, with processes of its own (those outside cannot be seen, and all within end with the first) and a bound
 * on their number; other systems offer nothing of the kind to a program like this one.
 *
 * <p>Source: unshare(1), prlimit(1), user_namespaces(7), pid_namespaces(7), from memory.
 */
public final class Confinement {
    /** Threads count as processes here; the JVM itself has some ten. */
    public static final int PROCESSES = 400;

    private static final List<String> APART = List.of(
            "unshare", "--user", "--map-current-user", "--net", "--pid", "--fork", "--mount-proc", "--kill-child=KILL");
    private static final List<String> BOUNDED = List.of("prlimit", "--nproc=" + PROCESSES + ":" + PROCESSES);
    private static final int PATIENCE_SECONDS = 10;

    private static List<String> found;

    private Confinement() {}

    /** Whether this system keeps cells from the network, and from the processes of others. */
    public static boolean isOffered() {
        return !prefix().isEmpty();
    }

    /** What stands before the command of a cell's JVM; nothing where the system offers nothing. */
    static synchronized List<String> prefix() {
        if (found == null) {
            found = offered();
        }
        return found;
    }

    private static List<String> offered() {
        Optional<List<String>> prefix =
                resolved(Stream.of(APART, BOUNDED).flatMap(List::stream).toList());
        return prefix.filter(Confinement::works).orElse(List.of());
    }

    /** The same with the places of the two programs, for the cell has no search path. */
    private static Optional<List<String>> resolved(List<String> words) {
        List<String> command = new ArrayList<>();
        for (String word : words) {
            boolean isProgram = word.equals(APART.get(0)) || word.equals(BOUNDED.get(0));
            Optional<String> place = isProgram ? program(word) : Optional.of(word);
            if (place.isEmpty()) {
                return Optional.empty();
            }
            command.add(place.get());
        }
        return Optional.of(List.copyOf(command));
    }

    /** Where a program of the system is. */
    static Optional<String> program(String name) {
        return Stream.of("/usr/bin", "/bin")
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .map(Path::toString)
                .findFirst();
    }

    /** Some systems have the programs and forbid what they do. */
    private static boolean works(List<String> prefix) {
        List<String> command = new ArrayList<>(prefix);
        command.add(program("true").orElse("true"));
        try {
            Process trial = new ProcessBuilder(command)
                    .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            boolean ended = trial.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS);
            trial.destroyForcibly();
            return ended && trial.exitValue() == 0;
        } catch (IOException none) {
            return false;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
