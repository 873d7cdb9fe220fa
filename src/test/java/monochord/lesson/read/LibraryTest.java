package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LibraryTest {
    private static final String SOUND = "---\ntitle: %s\ngrade: 2\nneeds: []\nskills: []\n---\n\nPlay.\n";

    @TempDir
    Path folder;

    @BeforeEach
    void write() throws IOException {
        write("10-late/1-last.md", SOUND.formatted("The last one"));
        write("2-early/10-tenth.md", SOUND.formatted("The tenth"));
        write("2-early/9-ninth.md", "no head at all");
        write("2-early/README.md", "not a lesson");
        write("2-early/notes.txt", "not a lesson");
        write("drafts/1-draft.md", SOUND.formatted("A draft"));
        write("README.md", "not a lesson");
        Files.createDirectories(folder.resolve("2-early/11-a-folder.md"));
    }

    private void write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private List<String> listed() {
        return Library.in(folder).entries().stream()
                .map(entry ->
                        entry.number() + " " + entry.title() + " " + entry.grade() + (entry.isFaulty() ? " !" : ""))
                .toList();
    }

    @Test
    void listsLessonsInTheOrderOfTheirNumbersAndMarksTheFaulty() {
        assertEquals(List.of("2.9 Ninth 0 !", "2.10 The tenth 2", "10.1 The last one 2"), listed());
    }

    @Test
    void namesABookByItsFolder() {
        assertEquals("Early", Library.in(folder).entries().get(0).book());
    }

    @Test
    void isEmptyWhereThereIsNoFolder() {
        assertEquals(List.of(), Library.in(folder.resolve("nowhere")).entries());
        assertEquals(List.of(), Library.in(folder.resolve("README.md")).entries());
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            2.10             | tenth
            10.1             | last
            tenth            | tenth
            TENTH            | tenth
            ten              | tenth
            the last         | last
            the              | tenth
            2                |
            ''               |
            ../10-late/1-last.md |
            """)
    void findsALesson(String text, String slug) {
        assertEquals(Optional.ofNullable(slug), Library.in(folder).find(text).map(LibraryEntry::slug));
    }

    @Test
    void guessesWhatWasMeant() {
        assertEquals(
                "tenth", Library.in(folder).didYouMean("tentth").orElseThrow().slug());
        assertEquals(
                "last",
                Library.in(folder).didYouMean("The lost one").orElseThrow().slug());
        assertEquals(Optional.empty(), Library.in(folder).didYouMean("accordion"));
    }

    @Test
    void saysThatASlugIsUsedTwice() throws IOException {
        write("10-late/2-tenth.md", SOUND.formatted("Another tenth"));
        Path second = folder.resolve("10-late/2-tenth.md");
        assertEquals(
                List.of(second
                        + ":1:1: the slug tenth is used by lesson 2.10 already; write another name for this file"),
                Library.check(second).faults().stream().map(Object::toString).toList());
        assertTrue(Library.check(folder.resolve("2-early/10-tenth.md")).isSound());
    }

    @Test
    void checksNeedsAgainstTheOtherLessonsOfTheLibrary() throws IOException {
        write("2-early/12-more.md", SOUND.formatted("More").replace("[]\nskills", "[last, lost]\nskills"));
        Path more = folder.resolve("2-early/12-more.md");
        assertEquals(
                List.of(more + ":4:15: no lesson is called \"lost\"; write last"),
                Library.check(more).faults().stream().map(Object::toString).toList());
    }

    @Test
    void goesOnToTheNextLesson() {
        Library library = Library.in(folder);
        LibraryEntry tenth = library.find("tenth").orElseThrow();
        LibraryEntry last = library.after(tenth).orElseThrow();
        assertEquals("last", last.slug());
        assertEquals(Optional.empty(), library.after(last));
    }

    @Test
    void readsALessonOutsideAnyLibrary() throws IOException {
        write("loose.md", SOUND.formatted("Loose").replace("[]\nskills", "[anything]\nskills"));
        assertTrue(Library.check(folder.resolve("loose.md")).isSound());
        assertEquals(
                "loose",
                Library.check(folder.resolve("loose.md")).lesson().orElseThrow().slug());
    }
}
