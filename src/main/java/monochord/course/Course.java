package monochord.course;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import monochord.harmony.Transposition;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.theory.Key;
import monochord.theory.Mode;

/** The lessons in their order, and which of them comes next. */
public final class Course {
    private final Path folder;
    private final Path own;
    private Library library;
    private LibraryEntry last;
    private boolean isFinished;
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

    public Library library() {
        if (library == null) {
            library = own == null ? Library.in(folder) : Library.in(folder).and(own);
        }
        return library;
    }

    /** Whether the lessons have been looked for on disk already. */
    public boolean isRead() {
        return library != null;
    }

    /** Lessons go through the fifteen major keys: the key itself if it is one, else the nearest that is. */
    public static Key majorKey(Key key) {
        return Transposition.inUse(key.mode() == Mode.IONIAN ? key : key.relative());
    }

    public static String title(LibraryEntry entry) {
        return entry.number() + " " + entry.title();
    }

    /** This lesson is being taken. */
    public void begin(LibraryEntry entry) {
        last = entry;
        isFinished = false;
    }

    /** The lesson begun last was taken to its end. */
    public void finish() {
        isFinished = true;
    }

    /** The lesson begun last if it was left in the middle, else the one after it; if none was begun, as {@link #resume} said. */
    public Optional<LibraryEntry> next() {
        return last == null || isFinished ? following() : Optional.of(last);
    }

    /** The lesson after the one begun last; if none was, the one left from another day, else the first. */
    public Optional<LibraryEntry> following() {
        return last == null
                ? library().find(resume).or(() -> library().entries().stream().findFirst())
                : library().after(last);
    }

    /** The course goes on with this lesson, if none is begun before. */
    public void resume(String slug) {
        resume = slug;
    }

    public boolean wasTaken() {
        return last != null;
    }

    /**
     * What the last sitting left, with the next lesson in place of one that has been taken away since. Where all is as it was
     * one file is looked for and no lesson read, for the first prompt waits for this.
     */
    public Agenda stillThere(Agenda left, Predicate<String> isDone) {
        if (left.slug().isEmpty() || isThere(left)) {
            return left;
        }
        Optional<LibraryEntry> next = library().entries().stream()
                .filter(entry -> !isDone.test(entry.slug()))
                .findFirst();
        return new Agenda(
                next.map(LibraryEntry::slug).orElse(""), next.map(Course::title).orElse(""), left.entries());
    }

    private boolean isThere(Agenda left) {
        return library == null && Library.holds(folder, left.title(), left.slug())
                || library().find(left.slug()).isPresent();
    }

    /** What the next sitting begins with: a lesson that was broken off once more, else the one that follows. */
    public Agenda agenda(Agenda before, Knowledge knowledge) {
        if (last == null && (resume.isEmpty() || resume.equals(before.slug()))) {
            return Agenda.of(before.slug(), before.title(), knowledge);
        }
        Optional<LibraryEntry> coming = next();
        return Agenda.of(
                coming.map(LibraryEntry::slug).orElse(""),
                coming.map(Course::title).orElse(""),
                knowledge);
    }
}
