package monochord.lesson.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.LessonPart.Ask;
import monochord.lesson.LessonPart.ProsePart;
import monochord.lesson.TextRun;
import monochord.theory.Key;

/** Our lessons by their numbers ({@code 5.2}), and what of them tests look at. */
final class OurLessons {
    static final Map<String, Lesson> BY_NUMBER = read();

    private OurLessons() {}

    private static Map<String, Lesson> read() {
        Library library = Library.in(Path.of("lessons"));
        Map<String, Lesson> lessons = new LinkedHashMap<>();
        library.entries()
                .forEach(
                        entry -> library.read(entry).lesson().ifPresent(lesson -> lessons.put(entry.number(), lesson)));
        return lessons;
    }

    static Stream<Ask> asks(Lesson lesson) {
        return lesson.parts().stream().filter(Ask.class::isInstance).map(Ask.class::cast);
    }

    static int book(String number) {
        return Integer.parseInt(number.substring(0, number.indexOf('.')));
    }

    /** Lessons compare by book and place. */
    static int place(String number) {
        return 100 * book(number) + Integer.parseInt(number.substring(number.indexOf('.') + 1));
    }

    /** All that is said in C major. */
    static String said(Lesson lesson) {
        return String.join(
                " ", paragraphs(lesson, Key.parse("C"), lesson.parts().size()));
    }

    /** The paragraphs before a part. */
    static List<String> paragraphs(Lesson lesson, Key key, int upTo) {
        Filling filling = new Filling(key);
        List<String> paragraphs = new ArrayList<>();
        for (LessonPart part : lesson.parts().subList(0, upTo)) {
            if (part instanceof ProsePart prose) {
                prose.blocks()
                        .forEach(block -> paragraphs.add(String.join(
                                "",
                                block.spans().stream()
                                        .map(TextRun::text)
                                        .map(text -> filling.of(text).toString())
                                        .toList())));
            }
        }
        return paragraphs;
    }
}
