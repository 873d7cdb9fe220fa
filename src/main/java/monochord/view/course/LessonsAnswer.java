package monochord.view.course;

import java.util.List;
import java.util.Set;
import monochord.lesson.read.LibraryEntry;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Statement;

/** The lessons there are, by book, and which of them are finished or were left in the middle. */
public record LessonsAnswer(List<LibraryEntry> entries, Marks marks) implements Answer {
    /**
     * What a learner has done of them.
     *
     * @param done slugs of those that were taken to their end
     * @param left slugs of those that wait in the middle
     */
    public record Marks(Set<String> done, Set<String> left) {
        public Marks {
            done = Set.copyOf(done);
            left = Set.copyOf(left);
        }

        private Phrase of(LibraryEntry entry) {
            boolean waits = left.contains(entry.slug());
            return done.contains(entry.slug())
                    ? waits ? Phrase.of("done, waiting where you left it") : Phrase.of("done")
                    : waits ? Phrase.of("waiting where you left it") : Phrase.NOTHING;
        }
    }

    @Override
    public StyledText text(Look look) {
        if (entries.isEmpty()) {
            return Statement.of(Phrase.sentence("There are no lessons where they should be."))
                    .text(look);
        }
        StyledText.Builder text = StyledText.builder(look.reader());
        String book = "";
        for (LibraryEntry entry : entries) {
            if (!entry.book().equals(book)) {
                book = entry.book();
                text.line(Phrase.typed(book), Style.HEADING);
            }
            text.line(row(entry, look.reader()));
        }
        text.line(
                Phrase.of(
                        "{0} begins one; {1}, in a key of yours.",
                        Phrase.typed("learn NUMBER"), Phrase.typed("learn NUMBER in KEY")),
                Style.QUIET);
        return text.build().wrapped(look.width());
    }

    /** How many lines it takes, the prompt with them. */
    public int lines() {
        long books = entries.stream().map(LibraryEntry::book).distinct().count();
        return entries.size() + (int) books + 3;
    }

    private StyledLine row(LibraryEntry entry, Reader reader) {
        StyledLine row = StyledLine.of("  " + entry.number(), Style.TYPED)
                .plus("  ")
                .plus(Phrase.typed(entry.title()).in(reader));
        Phrase state = entry.isFaulty() ? Phrase.of("has faults: check it") : marks.of(entry);
        return state.isEmpty()
                ? row
                : row.plus("  ").plus(state.styled(Style.QUIET).in(reader));
    }

    @Override
    public void json(Json json) {
        json.put("kind", "lessons")
                .objects(
                        "lessons",
                        entries,
                        (object, entry) -> object.put("number", entry.number())
                                .put("slug", entry.slug())
                                .put("title", entry.title())
                                .put("book", entry.book())
                                .put("grade", entry.grade())
                                .put("done", marks.done.contains(entry.slug()))
                                .put("left", marks.left.contains(entry.slug())));
    }
}
