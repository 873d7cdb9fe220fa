package monochord.shell.sitting;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.lesson.Lesson;
import monochord.lesson.Library;
import monochord.practice.Question;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Answers;
import monochord.shell.answer.LessonEnd;
import monochord.shell.answer.LessonHead;
import monochord.shell.answer.Saying;
import monochord.theory.Key;

/** The lessons of this sitting: the library, the lesson being taken, and the one after it. */
public final class Course {
    private final Path folder;
    private Library library;
    private LessonWalk walk;
    private Lesson last;

    /** @param folder where the books are; it is read only when a lesson is wanted */
    public Course(Path folder) {
        this.folder = folder;
    }

    public Library library() {
        if (library == null) {
            library = Library.in(folder);
        }
        return library;
    }

    public boolean isOpen() {
        return walk != null;
    }

    /** Begins this lesson in a key, in place of the one being taken. */
    public Answer begin(Lesson lesson, Key key, Sitting sitting) {
        sitting.desk().clear();
        walk = new LessonWalk(lesson, key);
        return Answers.of(new LessonHead(lesson, key), goOn(sitting));
    }

    /** Begins the lesson after the last one taken, the first if none was. */
    Answer begin(Sitting sitting) {
        Optional<Library.Entry> next = next();
        if (next.isEmpty()) {
            return Sitting.idle();
        }
        Optional<Lesson> lesson = library().lesson(next.get());
        return lesson.isEmpty()
                ? Saying.of(next.get().title() + " has faults; check it: " + next.get().path())
                : begin(lesson.get(), sitting.key(), sitting);
    }

    Answer goOn(Sitting sitting) {
        Answer page = walk.goOn(sitting);
        if (!walk.isOver() || sitting.desk().isOpen()) {
            return page;
        }
        last = walk.lesson();
        Answer end = new LessonEnd(last, walk.asked(), walk.rightAtOnce(), next().map(Course::title).orElse(""));
        walk = null;
        return Answers.of(page, end);
    }

    private static String title(Library.Entry entry) {
        return entry.number() + " " + entry.title();
    }

    /** The lesson after the last one, in the order of the library. */
    private Optional<Library.Entry> next() {
        List<Library.Entry> entries = library().entries();
        int place = 0;
        for (int i = 0; i < entries.size() && last != null; i++) {
            place = entries.get(i).slug().equals(last.slug()) ? i + 1 : place;
        }
        return entries.stream().skip(place).findFirst();
    }

    /** Counts an answer to a question of the lesson. */
    void noteAnswer(Question question, boolean rightAtOnce) {
        if (walk != null) {
            walk.note(rightAtOnce);
        }
    }
}
