package monochord.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.lesson.read.Faults;
import monochord.lesson.read.Source;
import monochord.lesson.read.SourceLine;
import monochord.text.Phrase;

/**
 * Reads assignments and what pupils hand in, and finds every fault of a file in one pass. Nothing a file holds makes it
 * throw, and a file is read no further than {@value Source#MOST_BYTES} bytes.
 */
public final class AssignmentReader {
    private static final int LONGEST_HEAD = 4096;

    private final Faults faults;

    private AssignmentReader(String name) {
        this.faults = new Faults(name);
    }

    /** @param file need not be there; a fault says so, and that a link or a device is no file */
    public static AssignmentReading read(Path file) {
        return read(file, file.toString());
    }

    /** @param name as it stands in the faults */
    public static AssignmentReading read(Path file, String name) {
        AssignmentReader reader = new AssignmentReader(name);
        if (Files.isSymbolicLink(file) || Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !Files.isRegularFile(file)) {
            reader.faults.at(1, 1, Phrase.of("this is not a file"), Phrase.of("hand in a Markdown file"));
            return AssignmentReading.none(reader.faults.inOrder());
        }
        Source source = new Source(reader.faults, Source.MOST_BYTES);
        return reader.reading(source.bytes(file).map(source::decoded).flatMap(source::lines));
    }

    /** Reads a text as though it stood in a file of this name. */
    public static AssignmentReading read(String name, String text) {
        AssignmentReader reader = new AssignmentReader(name);
        return reader.reading(new Source(reader.faults, Source.MOST_BYTES).lines(text));
    }

    /** Whether a text is meant to be an assignment, or what was handed in for one. */
    public static boolean isAssignment(String text) {
        return new Source(new Faults(""), Source.MOST_BYTES)
                .lines(text)
                .filter(AssignmentHeadText::begins)
                .isPresent();
    }

    /** Whether what stands in a file is meant to be one; not for a link or a device. */
    public static boolean isAssignment(Path file) {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (InputStream in = Files.newInputStream(file)) {
            return isAssignment(new String(in.readNBytes(LONGEST_HEAD), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private AssignmentReading reading(Optional<List<SourceLine>> lines) {
        return lines.map(this::reading).orElseGet(() -> AssignmentReading.none(faults.inOrder()));
    }

    private AssignmentReading reading(List<SourceLine> lines) {
        AssignmentHeadText head = AssignmentHeadText.read(lines, faults);
        Optional<AssignmentHead> said = head.head();
        if (said.isEmpty()) {
            return AssignmentReading.none(faults.inOrder());
        }
        AssignmentBody body = AssignmentBody.read(lines.subList(head.end(), lines.size()), faults);
        Assignment assignment = new Assignment(said.get(), head.terms(), body.words(), body.draws(), body.questions());
        if (body.draws().isEmpty() && body.questions().isEmpty()) {
            faults.at(1, 1, Phrase.of("no question stands in it"), Phrase.of("keep the file as it was given out"));
        }
        Optional<HandIn> handIn = head.hasCode() || !body.answers().isEmpty()
                ? Optional.of(new HandIn(
                        assignment,
                        head.digest(),
                        head.code(),
                        head.notes(),
                        head.given(),
                        body.answers(),
                        body.places()))
                : Optional.empty();
        return new AssignmentReading(Optional.of(assignment), handIn, head.digest(), body.places(), faults.inOrder());
    }
}
