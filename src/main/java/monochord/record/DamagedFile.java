package monochord.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import monochord.text.Phrase;

/** Sets a damaged file aside under another name, with what SQLite keeps beside it; nothing is deleted. */
final class DamagedFile {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

    /** The log of latest changes goes along, for without it they could not be read again. */
    private static final List<String> BESIDE = List.of("", "-wal", "-shm");

    private DamagedFile() {}

    /** @return what to tell the learner */
    static Phrase move(Path file) throws IOException {
        Path aside = freeName(file);
        for (String ending : BESIDE) {
            Path part = with(file, ending);
            if (Files.exists(part)) {
                Files.move(part, with(aside, ending));
            }
        }
        return Phrase.of(
                "The record in {0} is damaged. It has been set aside as {1}, and a new one begun; nothing was deleted.",
                Phrase.typed(file.toString()), Phrase.typed(aside.getFileName().toString()));
    }

    private static Path freeName(Path file) {
        String stamped = file.getFileName() + ".damaged-" + STAMP.format(Instant.now());
        Path name = file.resolveSibling(stamped);
        for (int i = 2; Files.exists(name); i++) {
            name = file.resolveSibling(stamped + "-" + i);
        }
        return name;
    }

    private static Path with(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }
}
