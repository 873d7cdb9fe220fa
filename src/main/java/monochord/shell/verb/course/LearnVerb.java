package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.clause;
import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.Optional;
import monochord.course.Course;
import monochord.lesson.read.Library;
import monochord.lesson.read.LibraryEntry;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.LessonStart;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.classroom.HomeworkStart;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;

/** Begins a lesson. */
final class LearnVerb implements Verb {
    @Override
    public String word() {
        return "learn";
    }

    @Override
    public Usage usage() {
        return Usage.of(
                        word(),
                        Usage.VerbTopic.LEARNING,
                        Phrase.of(
                                "begin a lesson, or practice a teacher sent, or go on where you left it; alone, the next lesson"))
                .form(may(takes(Value.LESSON, Value.FILE)), may(clause("in", Value.KEY)))
                .form(may(clause(HomeworkStart.AS, Value.CODE)))
                .examples("learn 1.1", "learn 5.2 in A", "learn homework.md as 7b-04");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Optional<Key> key = sentence.clause("in").map(part -> part.read(LearnVerb::majorKey));
        Course course = sitting.course();
        Sentence.SentencePart named = sentence.body();
        if (!named.isEmpty() && HomeworkStart.isFile(named, sitting)) {
            return HomeworkStart.alone(sentence, sitting);
        }
        LibraryEntry entry =
                named.isEmpty() ? next(sentence, sitting) : named.read(text -> find(course.library(), text));
        return LessonStart.alone(entry, key, sitting);
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

    /** The one after the lesson that is being taken, else the one that Enter begins. */
    private static LibraryEntry next(Sentence sentence, Sitting sitting) {
        Course course = sitting.course();
        return (sitting.teaching().isInLesson() ? course.following() : course.next())
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
}
