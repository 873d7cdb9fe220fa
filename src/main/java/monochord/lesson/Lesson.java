package monochord.lesson;

import java.util.List;
import monochord.practice.Skill;

/**
 * A lesson as it is taught, with all that could be read of it.
 *
 * @param slug the file name without number and ending: {@code the-lowered-seventh}
 * @param book the title of the book, empty if the file lies in none
 * @param number place in the library, {@code 3.2}; empty if the names of file and folder give none
 * @param grade from 1 to 8
 * @param needs slugs of the lessons that come before
 * @param skills what it says it asks
 */
public record Lesson(
        String slug,
        String book,
        String number,
        String title,
        int grade,
        List<String> needs,
        List<Skill> skills,
        List<LessonPart> parts) {
    public Lesson {
        needs = List.copyOf(needs);
        skills = List.copyOf(skills);
        parts = List.copyOf(parts);
    }
}
