package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import monochord.lesson.Block;
import monochord.lesson.Fault;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.Part.Ask;
import monochord.lesson.Part.Prose;
import monochord.lesson.Span;
import monochord.practice.Question;
import monochord.theory.Key;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lessons that come with the project. */
class NineLessonsTest {
    private static final Library LIBRARY = Library.in(Path.of("lessons"));
    private static final List<Lesson> LESSONS = new ArrayList<>();
    private static final List<Fault> FAULTS = new ArrayList<>();

    @BeforeAll
    static void readAll() {
        LIBRARY.entries().stream().map(LIBRARY::read).forEach(reading -> {
            FAULTS.addAll(reading.faults());
            reading.lesson().ifPresent(LESSONS::add);
        });
    }

    private static <P> List<P> parts(Class<P> kind) {
        return LESSONS.stream()
                .flatMap(lesson -> lesson.parts().stream())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static Stream<String> texts() {
        return parts(Prose.class).stream()
                .flatMap(prose -> prose.blocks().stream())
                .map(Block::spans)
                .flatMap(List::stream)
                .map(Span::text);
    }

    @Test
    void haveNoFault() {
        assertEquals(List.of(), FAULTS);
        assertTrue(LESSONS.size() >= 9, "read " + LESSONS.size());
    }

    @Test
    void standInOrderWithTheEasyOnesFirst() {
        assertEquals(
                List.of("1.1", "1.2", "1.3", "2.1", "2.2", "2.3", "3.1", "3.2", "3.3"),
                LIBRARY.entries().stream().map(LibraryEntry::number).limit(9).toList());
        List<Integer> grades =
                LIBRARY.entries().stream().map(LibraryEntry::grade).toList();
        assertEquals(grades.stream().sorted().toList(), grades);
    }

    @Test
    void needOnlyWhatComesBefore() {
        List<String> known = new ArrayList<>();
        for (Lesson lesson : LESSONS) {
            assertTrue(known.containsAll(lesson.needs()), lesson.slug());
            known.add(lesson.slug());
        }
    }

    @Test
    void fillInInAllFifteenMajorKeys() {
        List<String> texts = texts().filter(text -> text.contains("${")).toList();
        assertTrue(texts.size() > 40, "fills: " + texts.size());
        for (Key key : Key.majorKeys()) {
            Filling filling = new Filling(key);
            texts.forEach(text -> assertFalse(filling.of(text).contains("${"), text));
        }
    }

    @Test
    void areReadAsProseWithoutMarkdownLeftOver() {
        assertTrue(texts().noneMatch(text -> text.contains("**") || text.contains("```") || text.contains("##")));
        assertEquals("Two sizes of move", headings().get(0));
    }

    private static List<String> headings() {
        return parts(Prose.class).stream()
                .flatMap(prose -> prose.blocks().stream())
                .filter(Block.Heading.class::isInstance)
                .map(heading -> heading.spans().get(0).text())
                .toList();
    }

    @Test
    void askInEveryKeyWithoutRepeatingThemselves() {
        List<Ask> asks = parts(Ask.class);
        assertTrue(asks.size() > 50, "blocks: " + asks.size());
        for (Key key : Key.majorKeys()) {
            asks.forEach(ask -> noneTwiceInARow(ask.questions(key, 7)));
        }
    }

    private static void noneTwiceInARow(List<Question> questions) {
        assertFalse(questions.isEmpty());
        for (int i = 1; i < questions.size(); i++) {
            assertFalse(questions.get(i).toString().equals(questions.get(i - 1).toString()), questions.toString());
        }
    }

    @Test
    void askAsOftenAsTheySayWhereTheKeysAreTheirOwn() {
        for (Ask ask : parts(Ask.class)) {
            if (!ask.keys().toString().contains("same")) {
                assertEquals(ask.count(), ask.questions(Key.parse("C"), 3).size(), ask.toString());
            }
        }
    }

    @Test
    void goFromTheFirstStepToTheLast() {
        Ask ask = (Ask) LESSONS.get(6).parts().stream()
                .filter(part -> part instanceof Ask asked && asked.count() == 5)
                .findFirst()
                .orElseThrow();
        assertEquals("F#, C#, then Bb, Eb, then Ab, Gb", ask.keys().toString());
        List<String> steps = List.of("F# C#", "F# C#", "Bb Eb", "Bb Eb", "Ab Gb");
        for (long seed = 0; seed < 20; seed++) {
            List<Question> questions = ask.questions(Key.parse("C"), seed);
            for (int i = 0; i < 5; i++) {
                String tonic = questions.get(i).key().tonic().toString();
                assertTrue(List.of(steps.get(i).split(" ")).contains(tonic), questions.toString());
            }
        }
    }

    @Test
    void askTheSameUnderTheSameSeed() {
        for (Ask ask : parts(Ask.class)) {
            assertEquals(ask.questions(Key.parse("D"), 11), ask.questions(Key.parse("D"), 11));
        }
        Ask free = parts(Ask.class).stream()
                .filter(ask -> ask.subject() == null)
                .findFirst()
                .orElseThrow();
        assertFalse(free.questions(Key.parse("D"), 1).equals(free.questions(Key.parse("D"), 2)));
    }
}
