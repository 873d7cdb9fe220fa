package monochord.shell.sitting;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Transposition;
import monochord.lesson.Lesson;
import monochord.lesson.Reading;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Question;
import monochord.practice.knowing.Knowledge;
import monochord.record.Agenda;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.course.CheckAnswer;
import monochord.view.course.LessonEnd;
import monochord.view.course.LessonHead;

/** The lessons of this sitting: the library, the lesson being taken, and the one after it. */
public final class Course {
    private final Path folder;
    private final Path own;
    private Library library;
    private LessonWalk walk;
    private LibraryEntry last;
    private String resume = "";

    /** @param folder where the books are; it is read only when a lesson is wanted */
    public Course(Path folder) {
        this(folder, null);
    }

    /** @param own where the learner, or a teacher, keeps lessons besides, or null */
    public Course(Path folder, Path own) {
        this.folder = folder;
        this.own = own;
    }

    /** Nothing of it taken yet, with the same library. */
    public Course afresh() {
        Course fresh = new Course(folder, own);
        fresh.library = library;
        return fresh;
    }

    /** Goes on without running the code that was shown. */
    public void passCodeBy() {
        if (walk != null) {
            walk.passCodeBy();
        }
    }

    public Library library() {
        if (library == null) {
            library = own == null ? Library.in(folder) : Library.in(folder).and(own);
        }
        return library;
    }

    public boolean isOpen() {
        return walk != null;
    }

    /** Begins to take a lesson with a room, or says what is wrong with it. */
    public Answer present(LibraryEntry entry, Key key, Sitting sitting) {
        Reading reading = library().read(entry);
        if (reading.lesson().isPresent() && reading.isSound()) {
            sitting.settle(key);
            return sitting.teaching()
                    .present(new Presentation(reading.lesson().get(), majorKey(key), sitting.nextSeed()));
        }
        return faults(entry, reading);
    }

    private static Answer faults(LibraryEntry entry, Reading reading) {
        return new CheckAnswer(List.of(new CheckAnswer.Checked(entry.file().toString(), reading.faults(), true)));
    }

    /** Begins a lesson of the library, or says what is wrong with it. */
    public Answer begin(LibraryEntry entry, Key key, Sitting sitting) {
        Reading reading = library().read(entry);
        if (reading.lesson().isPresent() && reading.isSound()) {
            last = entry;
            return begin(reading.lesson().get(), majorKey(key), sitting);
        }
        return faults(entry, reading);
    }

    /** Lessons go through the fifteen major keys: the key itself if it is one, else the nearest that is. */
    static Key majorKey(Key key) {
        return Transposition.inUse(key.mode() == Mode.IONIAN ? key : key.relative());
    }

    private Answer begin(Lesson lesson, Key key, Sitting sitting) {
        sitting.teaching().clearForLesson();
        walk = new LessonWalk(lesson, key, new LessonCode(last.file()));
        return Answers.of(new LessonHead(lesson, key), goOn(sitting));
    }

    /** Begins the lesson after the last one begun, the first if none was. */
    Answer begin(Sitting sitting) {
        Optional<LibraryEntry> next = next();
        return next.isEmpty() ? Sitting.idle() : begin(next.get(), sitting.key(), sitting);
    }

    Answer goOn(Sitting sitting) {
        Answer page = walk.goOn(sitting);
        if (!walk.isOver() || sitting.desk().isOpen()) {
            return page;
        }
        Answer end = new LessonEnd(
                walk.lesson(),
                walk.asked(),
                walk.rightAtOnce(),
                next().map(Course::title).orElse(""));
        walk = null;
        return Answers.of(page, end);
    }

    static String title(LibraryEntry entry) {
        return entry.number() + " " + entry.title();
    }

    /** The lesson after the last one begun; if none was, the one left from another day, else the first. */
    public Optional<LibraryEntry> next() {
        return last == null
                ? library().find(resume).or(() -> library().entries().stream().findFirst())
                : library().after(last);
    }

    /** Goes on, in another sitting, with this lesson. */
    void resume(String slug) {
        resume = slug;
    }

    boolean wasTaken() {
        return last != null;
    }

    /** What the next sitting begins with: a lesson that was broken off once more, else the one that follows. */
    Agenda agenda(Agenda before, Knowledge knowledge) {
        if (last == null && (resume.isEmpty() || resume.equals(before.slug()))) {
            return Agenda.of(before.slug(), before.title(), knowledge);
        }
        Optional<LibraryEntry> coming = isOpen() ? Optional.of(last) : next();
        return Agenda.of(
                coming.map(LibraryEntry::slug).orElse(""),
                coming.map(Course::title).orElse(""),
                knowledge);
    }

    /** Counts an answer to a question of the lesson. */
    void noteAnswer(boolean rightAtOnce) {
        if (walk != null) {
            walk.note(rightAtOnce);
        }
    }

    /** Keeps a question of the lesson for later, because another was asked for by name. */
    void keep(Question question) {
        if (walk != null) {
            walk.keep(question);
        }
    }
}
