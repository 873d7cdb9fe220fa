package monochord.view.course;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import monochord.lesson.read.LibraryEntry;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** The lessons there are, a line for each book. */
public record BooksAnswer(LessonsAnswer lessons) implements Answer {
    private static final int TITLE = 30;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder();
        Map<String, List<LibraryEntry>> books = lessons.entries().stream()
                .collect(Collectors.groupingBy(LibraryEntry::book, LinkedHashMap::new, Collectors.toList()));
        books.forEach((book, entries) -> text.line(row(book, entries)));
        return text.line(
                        "lessons 1 lists those of book 1; learn 1.1 begins one, learn 1.1 in D in a key of yours.",
                        Style.QUIET)
                .build()
                .in(look.signs())
                .wrapped(look.width());
    }

    private StyledLine row(String book, List<LibraryEntry> entries) {
        String first = entries.get(0).number();
        String last = entries.get(entries.size() - 1).number();
        String gap = " ".repeat(Math.max(2, TITLE - book.length()));
        long done = entries.stream()
                .filter(entry -> lessons.marks().done().contains(entry.slug()))
                .count();
        long faulty = entries.stream().filter(LibraryEntry::isFaulty).count();
        return StyledLine.of("  " + first.substring(0, first.indexOf('.')), Style.TYPED)
                .plus("  " + book + gap + (first.equals(last) ? first : first + " to " + last))
                .plus(done == 0 ? "" : "  " + done + " of " + entries.size() + " done", Style.QUIET)
                .plus(faulty == 0 ? "" : "  with faults in " + faulty + ": check them", Style.QUIET);
    }

    @Override
    public void json(Json json) {
        lessons.json(json);
    }
}
