package monochord.shell.verb.course;

import java.util.List;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Course;
import monochord.shell.sitting.Sitting;
import monochord.theory.Clause;
import monochord.theory.Key;
import monochord.theory.Unreadable;
import monochord.view.Answer;

/** Begins a lesson. */
final class LearnVerb implements Verb {
    @Override
    public Usage usage() {
        return Usage.of(
                "learn",
                Usage.Topic.LEARNING,
                "learn [LESSON] [in KEY]",
                "begin a lesson, by number or name; alone, the next one",
                "learn 1.1",
                "learn 5.2 in A");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Key key = sentence.clause("in")
                .map(part -> part.read(LearnVerb::majorKey))
                .orElseGet(sitting::key);
        Course course = sitting.course();
        Sentence.Part named = sentence.body();
        LibraryEntry entry =
                named.isEmpty() ? next(sentence, course) : named.read(text -> find(course.library(), text));
        sitting.settle(key);
        return course.begin(entry, key, sitting);
    }

    /** Lessons are written for major keys; the minor ones come up inside them. */
    static Key majorKey(String text) {
        Key key = Key.parse(text);
        if (key.isMinor() || !key.isInUse()) {
            throw Unreadable.because(
                    text, 0, "a key to learn in", "lessons go through the fifteen major keys", "learn 5.2 in A");
        }
        return key;
    }

    private static LibraryEntry next(Sentence sentence, Course course) {
        return course.next()
                .orElseThrow(() -> Unreadable.because(
                        sentence.whole(), 0, "a lesson", "there is none after the last", "learn 1.1"));
    }

    static LibraryEntry find(Library library, String text) {
        return library.find(text)
                .orElseThrow(() -> Unreadable.because(
                        text,
                        0,
                        "a lesson",
                        library.didYouMean(text)
                                .map(entry -> Clause.of("did you mean {0} {1}", entry.number(), entry.title()))
                                .orElseGet(() -> Clause.of("lessons lists them all")),
                        "learn 1.1"));
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return sitting.course().library().entries().stream()
                .map(LibraryEntry::number)
                .toList();
    }
}
