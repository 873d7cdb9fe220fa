package monochord.lesson;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Our lessons as they are written. */
final class LessonText {
    static final Path FOLDER = Path.of("lessons");

    private LessonText() {}

    /** Fails where the lesson of that number does not say these words. */
    static void says(String number, String words) throws IOException {
        String[] parts = number.split("\\.");
        String lesson = Files.readString(in(in(FOLDER, parts[0]), parts[1]));
        assertTrue(lesson.contains(words), () -> number + " does not say: " + words);
    }

    private static Path in(Path folder, String number) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith(number + "-"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
