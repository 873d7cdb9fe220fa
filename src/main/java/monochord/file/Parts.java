package monochord.file;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The half-written files beside the places where they belong. One that is given up goes at once, also where the program is
 * told to end meanwhile; what a killed program left behind goes when the same file is next written.
 */
final class Parts {
    private static final String SUFFIX = ".part";
    /** The process that writes the part, and the how manyeth it is there. */
    private static final Pattern WRITER = Pattern.compile("\\.(\\d+)-\\d+" + Pattern.quote(SUFFIX) + "$");

    private static final Duration LONG_AGO = Duration.ofHours(1);

    private static final AtomicLong COUNT = new AtomicLong();
    private static final Set<Path> BEGUN = ConcurrentHashMap.newKeySet();

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(() -> BEGUN.forEach(Parts::remove), "parts"));
    }

    private Parts() {}

    /** Where a new part for that place goes; two writers of one file, in one process or in two, get different ones. */
    static Path begin(Path place) {
        String writer = ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet();
        Path part = place.resolveSibling(start(place) + writer + SUFFIX);
        BEGUN.add(part);
        return part;
    }

    static void end(Path part) {
        remove(part);
        BEGUN.remove(part);
    }

    /** Removes the parts of that place whose writers have ended. */
    static void sweep(Path place) {
        try (DirectoryStream<Path> beside =
                Files.newDirectoryStream(place.getParent(), entry -> isLeft(entry, place))) {
            beside.forEach(Parts::remove);
        } catch (IOException unlisted) {
            // A folder that may be written but not listed keeps them.
        }
    }

    /** A process that is not known here may write from another machine. */
    private static boolean isLeft(Path entry, Path place) throws IOException {
        String name = entry.getFileName().toString();
        Matcher writer = WRITER.matcher(name);
        return name.startsWith(start(place))
                && writer.find()
                && process(writer.group(1)).isEmpty()
                && Files.getLastModifiedTime(entry)
                        .toInstant()
                        .isBefore(Instant.now().minus(LONG_AGO));
    }

    private static Optional<ProcessHandle> process(String number) {
        return number.length() > 18 ? Optional.empty() : ProcessHandle.of(Long.parseLong(number));
    }

    private static String start(Path place) {
        return "." + place.getFileName() + ".";
    }

    private static void remove(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException stays) {
            // It is met again when the file is next written.
        }
    }
}
