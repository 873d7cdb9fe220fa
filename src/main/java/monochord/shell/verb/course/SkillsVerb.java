package monochord.shell.verb.course;

import java.util.List;
import java.util.stream.IntStream;
import monochord.course.Course;
import monochord.course.Syllabus;
import monochord.lesson.read.LibraryEntry;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.course.SkillsAnswer;

/** Lists what can be asked. */
public final class SkillsVerb implements Verb {
    @Override
    public String word() {
        return "skills";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of("list what can be asked, by book, with an example each"))
                .examples("skills");
    }

    @Override
    public boolean isAside() {
        return true;
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        if (!sentence.body().isEmpty()) {
            throw Unreadable.because(
                    sentence.body().text(), 0, "wanted here", "skills lists all that can be asked", "skills");
        }
        return all(sitting.course());
    }

    /** All of them, under the titles of their books. */
    public static SkillsAnswer all(Course course) {
        List<LibraryEntry> lessons = course.library().entries();
        return new SkillsAnswer(IntStream.rangeClosed(1, Syllabus.books())
                .mapToObj(book -> new SkillsAnswer.Book(book, title(book, lessons), Syllabus.of(book)))
                .toList());
    }

    private static String title(int book, List<LibraryEntry> lessons) {
        return lessons.stream()
                .filter(entry -> entry.number().startsWith(book + "."))
                .findFirst()
                .map(LibraryEntry::book)
                .orElse("");
    }
}
