package monochord.view.course;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import monochord.lesson.read.LibraryEntry;
import monochord.text.Phrase;
import monochord.text.Reader;
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
        StyledText.Builder text = StyledText.builder(look.reader());
        Map<String, List<LibraryEntry>> books = lessons.entries().stream()
                .collect(Collectors.groupingBy(LibraryEntry::book, LinkedHashMap::new, Collectors.toList()));
        books.forEach((book, entries) -> text.line(row(book, entries, look.reader())));
        return text.line(
                        Phrase.of(
                                "{0} lists those of book 1; {1} begins one, {2} in a key of yours.",
                                Phrase.typed("lessons 1"), Phrase.typed("learn 1.1"), Phrase.toType("learn 1.1 in D")),
                        Style.QUIET)
                .build()
                .wrapped(look.width());
    }

    private StyledLine row(String book, List<LibraryEntry> entries, Reader reader) {
        String first = entries.get(0).number();
        String last = entries.get(entries.size() - 1).number();
        Phrase numbers = first.equals(last)
                ? Phrase.typed(first)
                : Phrase.of("{0} to {1}", Phrase.typed(first), Phrase.typed(last));
        String gap = " ".repeat(Math.max(2, TITLE - book.length()));
        int done = (int) entries.stream()
                .filter(entry -> lessons.marks().done().contains(entry.slug()))
                .count();
        int faulty = (int) entries.stream().filter(LibraryEntry::isFaulty).count();
        return StyledLine.of("  " + first.substring(0, first.indexOf('.')), Style.TYPED)
                .plus("  ")
                .plus(Phrase.typed(book + gap).in(reader))
                .plus(numbers.in(reader))
                .plus(said(done, Phrase.of("{0} of {1} done", done, entries.size()), reader))
                .plus(said(faulty, Phrase.of("with faults in {0}: check them", faulty), reader));
    }

    private static StyledLine said(int count, Phrase said, Reader reader) {
        return count == 0
                ? StyledLine.EMPTY
                : StyledLine.of("  ").plus(said.styled(Style.QUIET).in(reader));
    }

    @Override
    public void json(Json json) {
        lessons.json(json);
    }
}
