package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.lesson.Fault;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnmarkedNamesTest {
    @TempDir
    Path folder;

    private List<String> found(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("lesson.md"), text);
        return UnmarkedNames.in(file, "lesson.md").stream().map(Fault::toString).toList();
    }

    @Test
    @DisplayName("a note, a chord and a key in running text want a mark")
    void findsWhatLacksItsMark() throws IOException {
        assertEquals(
                List.of(
                        "lesson.md:1:10: \"E♭\" is a note's name without its mark; write ${E♭}, or ${text E♭} if it is none",
                        "lesson.md:3:4: \"B\" is a note's name without its mark; write ${B}, or ${text B} if it is none",
                        "lesson.md:3:17: \"D\" is a note's name without its mark; write ${D}, or ${text D} if it is none"),
                found("Not ${E} E♭.\n\nIn Bm7♭5, or in D minor.\n"));
    }

    @Test
    @DisplayName("marks, lines to type, blocks, the head and articles are passed over")
    void passesOverTheRest() throws IOException {
        assertEquals(
                List.of(),
                found("---\ntitle: In D\n---\n\n${F A C} and `F A C`, plan ${text B}.\n\n- **Slip.** A step is no B–C"
                                .replace(" B–C", " leap")
                        + "\n\n```listen\nF C G\n```\n"));
    }

    @Test
    @DisplayName("a file that cannot be read has none")
    void aMissingFileHasNone() {
        assertEquals(List.of(), UnmarkedNames.in(folder.resolve("gone.md"), "gone.md"));
    }

    @Test
    @DisplayName("all names in our own lessons are marked")
    void oursAreMarked() throws IOException {
        try (var files = Files.walk(Path.of("lessons"))) {
            List<Path> lessons = files.filter(LessonName::isLesson).toList();
            assertEquals(
                    List.of(),
                    lessons.stream()
                            .flatMap(file -> UnmarkedNames.in(file, file.toString()).stream())
                            .toList());
            assertEquals(true, lessons.size() >= 63, "lessons seen: " + lessons.size());
        }
    }
}
