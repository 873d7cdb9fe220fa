package monochord.shell.verb.course;

import static monochord.shell.sentence.FormPart.may;
import static monochord.shell.sentence.FormPart.takes;

import java.util.List;
import monochord.lesson.read.LibraryEntry;
import monochord.record.Bookmarks;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Value;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.course.BooksAnswer;
import monochord.view.course.LessonsAnswer;

/** Lists the lessons; where they are more than a screen holds, the books. */
final class LessonsVerb implements Verb {
    @Override
    public String word() {
        return "lessons";
    }

    @Override
    public Usage usage() {
        return Usage.of(word(), Usage.VerbTopic.LEARNING, Phrase.of("list the books, or the lessons of one"))
                .form(may(takes(Value.BOOK)))
                .examples("lessons 5");
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        List<LibraryEntry> all = sitting.course().library().entries();
        LessonsAnswer.Marks marks = marks(sitting.study().bookmarks());
        if (!sentence.body().isEmpty()) {
            return new LessonsAnswer(sentence.body().read(text -> book(text, all)), marks);
        }
        LessonsAnswer whole = new LessonsAnswer(all, marks);
        return whole.lines() > sitting.screenLines() ? new BooksAnswer(whole) : whole;
    }

    private static LessonsAnswer.Marks marks(Bookmarks bookmarks) {
        return new LessonsAnswer.Marks(bookmarks.done(), bookmarks.left().keySet());
    }

    private static List<LibraryEntry> book(String text, List<LibraryEntry> all) {
        List<LibraryEntry> lessons = all.stream()
                .filter(entry -> entry.number().startsWith(text + "."))
                .toList();
        if (lessons.isEmpty()) {
            throw Unreadable.because(
                    text, 0, "a book", "books go by number, and lessons alone lists them", "lessons 5");
        }
        return lessons;
    }
}
