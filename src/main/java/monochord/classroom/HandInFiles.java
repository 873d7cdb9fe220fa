package monochord.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The files that are to be marked, and the assignments found among them: those with neither a code nor an answer in them.
 * Links are never followed. However many files there are, only some are held at a time.
 */
public final class HandInFiles {
    private static final int DEEPEST = 4;
    private static final int AT_A_TIME = 256;
    private static final int LONGEST_HEAD = 4096;
    private static final Pattern NO_CODE = Pattern.compile("(?m)^\\s*code\\s*:\\s*$");

    private final List<Path> files;
    private final TeachersFiles teacher;
    private final UnaryOperator<String> naming;

    /** One that was marked, and the earlier file of the same pupil for the same assignment, if there is one. */
    public record MarkedFile(MarkedHandIn handIn, Optional<String> doubles) {}

    private HandInFiles(List<Path> files, TeachersFiles teacher, UnaryOperator<String> naming) {
        this.files = files;
        this.teacher = teacher;
        this.naming = naming;
    }

    /**
     * @param named files, and folders of which all files are taken but hidden ones
     * @param teacher what the teacher has besides; its assignments go before those found here
     * @param naming how the path of a file is told
     * @throws IOException if a folder cannot be read
     */
    public static HandInFiles of(List<Path> named, TeachersFiles teacher, UnaryOperator<String> naming)
            throws IOException {
        List<Path> files = new ArrayList<>();
        for (Path one : named) {
            files.addAll(Files.isDirectory(one) && !Files.isSymbolicLink(one) ? within(one) : List.of(one));
        }
        List<Assignment> assignments = new ArrayList<>(teacher.assignments().values());
        List<Path> handIns = new ArrayList<>();
        for (Path file : files) {
            assignment(file)
                    .filter(found -> isNew(found, assignments))
                    .ifPresentOrElse(assignments::add, () -> handIns.add(file));
        }
        return new HandInFiles(handIns, TeachersFiles.of(assignments, teacher.codes()), naming);
    }

    /** Of two with one id only the same is taken as the teacher's. */
    private static boolean isNew(Assignment found, List<Assignment> known) {
        return known.stream()
                .noneMatch(other ->
                        other.id().equals(found.id()) && !other.digest().equals(found.digest()));
    }

    private static List<Path> within(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder, DEEPEST, new FileVisitOption[0])) {
            return all.filter(path -> !isHidden(path))
                    .filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                    .map(Path::normalize)
                    .sorted()
                    .toList();
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
        }
    }

    private static boolean isHidden(Path path) {
        return path.getNameCount() > 1 && path.getFileName().toString().startsWith(".");
    }

    /** What a file gives out, if it is an assignment in which nothing was written. */
    private static Optional<Assignment> assignment(Path file) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file)) {
            String start = new String(in.readNBytes(LONGEST_HEAD), StandardCharsets.UTF_8);
            if (!NO_CODE.matcher(start).find()) {
                return Optional.empty();
            }
        } catch (IOException unreadable) {
            return Optional.empty();
        }
        AssignmentReading reading = AssignmentReader.read(file);
        return reading.handIn().isPresent() ? Optional.empty() : reading.assignment();
    }

    /** How many are to be marked. */
    public int count() {
        return files.size();
    }

    public TeachersFiles teacher() {
        return teacher;
    }

    /** Marks one after the other, in the order of their names; several at a time where there are several cores. */
    public void mark(Consumer<MarkedFile> to) {
        Map<String, String> seen = new HashMap<>();
        for (int from = 0; from < files.size(); from += AT_A_TIME) {
            List<Path> some = files.subList(from, Math.min(files.size(), from + AT_A_TIME));
            IntStream.range(0, some.size())
                    .parallel()
                    .mapToObj(i -> Marking.mark(some.get(i), naming.apply(some.get(i).toString()), teacher))
                    .toList()
                    .forEach(marked -> to.accept(new MarkedFile(marked, seenBefore(marked, seen))));
        }
    }

    private static Optional<String> seenBefore(MarkedHandIn marked, Map<String, String> seen) {
        return marked.code()
                .map(code -> seen.putIfAbsent(marked.assignment() + " " + code, marked.file()));
    }
}
