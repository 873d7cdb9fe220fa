package monochord.view.course;

import java.util.List;
import monochord.lesson.read.LibraryEntry;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;

/** The lessons there are, by book. */
public record LessonsAnswer(List<LibraryEntry> entries) implements Answer {
    @Override
    public StyledText text(Look look) {
        if (entries.isEmpty()) {
            return StyledText.of("There are no lessons where they should be.").wrapped(look.width());
        }
        StyledText.Builder text = StyledText.builder();
        String book = "";
        for (LibraryEntry entry : entries) {
            if (!entry.book().equals(book)) {
                book = entry.book();
                text.line(book, Style.HEADING);
            }
            text.line(row(entry));
        }
        text.line("learn NUMBER begins one; learn NUMBER in KEY, in a key of yours.", Style.QUIET);
        return text.build().in(look.signs()).wrapped(look.width());
    }

    /** How many lines it takes, the prompt with them. */
    public int lines() {
        long books = entries.stream().map(LibraryEntry::book).distinct().count();
        return entries.size() + (int) books + 3;
    }

    private static StyledLine row(LibraryEntry entry) {
        StyledLine row = StyledLine.of("  " + entry.number(), Style.TYPED).plus("  " + entry.title());
        return entry.isFaulty() ? row.plus("  has faults: check it", Style.QUIET) : row;
    }

    @Override
    public void json(Json json) {
        json.objects(
                "lessons",
                entries,
                (object, entry) -> object.put("number", entry.number())
                        .put("slug", entry.slug())
                        .put("title", entry.title())
                        .put("book", entry.book())
                        .put("grade", entry.grade()));
    }
}
