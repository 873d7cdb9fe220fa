package monochord.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import monochord.lesson.Lesson;
import monochord.lesson.read.Library;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A lesson on paper. */
class LessonHandoutTest {
    @Test
    @DisplayName("a tune of a lesson stands on paper with its notes, chords and words, in the key of the handout")
    void aTuneStandsOnPaper() {
        Library library = Library.in(Path.of("lessons"));
        Lesson lesson = library.read(library.find("1.3").orElseThrow()).lesson().orElseThrow();
        List<String> lines = LessonHandout.of(lesson, Key.parse("F")).sections().stream()
                .flatMap(section -> section.blocks().stream())
                .map(block -> block.lines().stream().map(Object::toString).toList())
                .filter(said -> !said.isEmpty() && said.get(0).startsWith("Twinkle: "))
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of(
                        "Twinkle: Verse, bars 1 to 4, in F major",
                        "| F4 F4 C5 C5 | D5 D5 C5:2 | B♭4 B♭4 A4 A4 | G4 G4 F4:2 |",
                        "Chords: F | B♭ . F . | B♭ . F . | C . F . |",
                        "Twinkle, twinkle, little star, how I wonder what you are,"),
                lines);
    }
}
