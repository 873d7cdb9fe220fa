package monochord.course;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import monochord.lesson.LessonPart;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Skill;
import monochord.practice.skill.Skills;
import org.junit.jupiter.api.Test;

/** What is said to stand in a book is first asked there. */
class SyllabusTest {
    @Test
    void everySkillStandsInTheBookThatAsksForItFirst() {
        Library library = Library.in(Path.of("lessons"));
        Map<String, Integer> first = new TreeMap<>();
        for (LibraryEntry entry : library.entries()) {
            int book = Integer.parseInt(entry.number().replaceAll("\\..*", ""));
            library.read(entry).lesson().orElseThrow().parts().stream()
                    .filter(LessonPart.Ask.class::isInstance)
                    .forEach(part -> first.merge(((LessonPart.Ask) part).skill().id(), book, Math::min));
        }
        Map<String, Integer> said = new TreeMap<>();
        Skills.all().forEach(skill -> said.put(skill.id(), Syllabus.book(skill)));
        assertEquals(first, said);
    }

    @Test
    void everySkillStandsInOneBook() {
        List<Skill> all = IntStream.rangeClosed(1, Syllabus.books())
                .boxed()
                .flatMap(book -> Syllabus.of(book).stream())
                .toList();
        assertEquals(Skills.all().size(), all.size());
        assertEquals(Skills.all().size(), all.stream().distinct().count());
    }
}
