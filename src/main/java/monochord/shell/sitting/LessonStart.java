package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import monochord.course.Course;
import monochord.course.RoomLesson;
import monochord.lesson.Reading;
import monochord.lesson.read.LibraryEntry;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.course.CheckAnswer;

/** Begins a lesson of the library, or says what is wrong with it. */
public final class LessonStart {
    private LessonStart() {}

    /** For whoever sits at the line. */
    public static Answer alone(LibraryEntry entry, Optional<Key> key, Sitting sitting) {
        Course course = sitting.course();
        Reading reading = course.library().read(entry);
        if (reading.lesson().isEmpty() || !reading.isSound()) {
            return faults(entry, reading);
        }
        course.begin(entry);
        key.ifPresent(sitting::settle);
        LessonTeaching lesson = LessonTeaching.of(entry, reading.lesson().get(), key, sitting);
        if (!Course.majorKey(sitting.key()).equals(lesson.walk().key())) {
            sitting.settle(lesson.walk().key()); // it was left in this key
        }
        sitting.teaching().begin(lesson);
        return lesson.begin(sitting);
    }

    /** With a class; the learner's own lesson waits. */
    public static Answer withClass(LibraryEntry entry, Key key, Sitting sitting) {
        Reading reading = sitting.course().library().read(entry);
        if (reading.lesson().isEmpty() || !reading.isSound()) {
            return faults(entry, reading);
        }
        sitting.settle(key);
        RoomLesson shown = new RoomLesson(reading.lesson().get(), Course.majorKey(key), sitting.nextSeed());
        return sitting.teaching().begin(shown).begin(sitting);
    }

    private static Answer faults(LibraryEntry entry, Reading reading) {
        return new CheckAnswer(List.of(new CheckAnswer.Checked(entry.file().toString(), reading.faults(), true)));
    }
}
