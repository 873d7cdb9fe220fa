package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.lesson.Fault;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart;
import monochord.lesson.LessonPart.Ask;
import monochord.lesson.LessonPart.ProsePart;
import monochord.lesson.ProseBlock;
import monochord.lesson.TextRun;
import monochord.practice.Question;
import monochord.theory.Key;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lessons that come with the project. */
class CourseLessonsTest {
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
        return parts(ProsePart.class).stream()
                .flatMap(prose -> prose.blocks().stream())
                .map(ProseBlock::spans)
                .flatMap(List::stream)
                .map(TextRun::text);
    }

    @Test
    void haveNoFault() {
        assertEquals(List.of(), FAULTS);
        assertTrue(LESSONS.size() >= 40, "read " + LESSONS.size());
    }

    @Test
    void standInOrderWithTheEasyOnesFirst() {
        List<String> numbers =
                LIBRARY.entries().stream().map(LibraryEntry::number).toList();
        assertEquals(lessonsOfBooks(11, 11, 10, 10, 13, 10, 5), numbers);
        List<Integer> grades =
                LIBRARY.entries().stream().map(LibraryEntry::grade).toList();
        assertEquals(grades.stream().sorted().toList(), grades);
    }

    /** {@code 1.1 1.2 …}, for books of so many lessons. */
    private static List<String> lessonsOfBooks(int... sizes) {
        List<String> numbers = new ArrayList<>();
        for (int book = 1; book <= sizes.length; book++) {
            for (int lesson = 1; lesson <= sizes[book - 1]; lesson++) {
                numbers.add(book + "." + lesson);
            }
        }
        return numbers;
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
            texts.forEach(text -> assertFalse(filling.of(text).toString().contains("${"), text));
        }
    }

    @Test
    void areReadAsProseWithoutMarkdownLeftOver() {
        assertTrue(texts().noneMatch(text -> text.contains("**") || text.contains("```") || text.contains("##")));
        assertEquals("Two sizes of move", headings().get(0));
    }

    private static List<String> headings() {
        return parts(ProsePart.class).stream()
                .flatMap(prose -> prose.blocks().stream())
                .filter(ProseBlock.Heading.class::isInstance)
                .map(heading -> heading.spans().get(0).text())
                .toList();
    }

    @Test
    void askInEveryKeyWithoutRepeatingThemselves() {
        List<Ask> asks = parts(Ask.class);
        assertTrue(asks.size() > 50, "blocks: " + asks.size());
        for (Key key : Thorough.spread(Key.majorKeys(), 5, 0)) {
            asks.forEach(ask -> noneTwiceInARow(ask.questions(key, 7)));
            asks.forEach(ask -> beginsInNoHardestKey(ask, key));
        }
    }

    /** Where the first step has keys with up to four signs, one of those comes first. */
    private static void beginsInNoHardestKey(Ask ask, Key key) {
        List<Key> keys = ask.keys().in(key).get(0);
        boolean isChoice = keys.stream().anyMatch(one -> signs(one) < 5);
        for (int seed = 0; isChoice && seed < 9; seed++) {
            Key first = ask.questions(key, seed).get(0).key();
            assertTrue(!keys.contains(first) || signs(first) < 5, ask + " begins in " + first);
        }
    }

    private static int signs(Key key) {
        return Math.abs(key.signature());
    }

    private static void noneTwiceInARow(List<Question> questions) {
        assertFalse(questions.isEmpty());
        for (int i = 1; i < questions.size(); i++) {
            assertFalse(questions.get(i).toString().equals(questions.get(i - 1).toString()), questions.toString());
        }
    }

    /** Where a subject has the same answer in every key, asking it in one key after another asks nothing. */
    @Test
    void askNothingThatTheLastAnswerAnswers() {
        List<String> same = new ArrayList<>();
        for (Lesson lesson : LESSONS) {
            lesson.parts().stream()
                    .filter(part -> part instanceof Ask ask && ask.subject() != null && !isByEar(ask))
                    .map(Ask.class::cast)
                    .filter(CourseLessonsTest::isAnsweredByTheLastAnswer)
                    .forEach(ask -> same.add(lesson.slug() + ": " + ask.skill().id() + " of " + ask.subject()));
        }
        assertEquals(List.of(), same);
    }

    /** There a subject names what may sound, and the seed picks. */
    private static boolean isByEar(Ask ask) {
        return ask.skill().id().startsWith("ear-");
    }

    private static boolean isAnsweredByTheLastAnswer(Ask ask) {
        List<Question> questions = ask.questions(Key.parse("C"), 7);
        return IntStream.range(1, questions.size())
                .anyMatch(i ->
                        questions.get(i).expected().equals(questions.get(i - 1).expected()));
    }

    @Test
    void askAsOftenAsTheySayWhereTheKeysAreTheirOwn() {
        for (Ask ask : parts(Ask.class)) {
            if (!ask.keys().toString().contains("same")) {
                assertEquals(ask.count(), ask.questions(Key.parse("C"), 3).size(), ask.toString());
            }
        }
    }

    private static Lesson lesson(String slug) {
        return LESSONS.stream()
                .filter(lesson -> lesson.slug().equals(slug))
                .findFirst()
                .orElseThrow();
    }

    /** Each of the seven books goes through all the keys that charts are written in. */
    @Test
    void goThroughAllFifteenMajorKeysInEveryBook() {
        Set<String> books = new TreeSet<>();
        for (Lesson lesson : LESSONS) {
            books.add(book(lesson));
        }
        assertEquals(Set.of("1", "2", "3", "4", "5", "6", "7"), books);
        books.forEach(book -> assertEquals(Set.copyOf(Key.majorKeys()), majorKeysAskedIn(book), "book " + book));
    }

    private static String book(Lesson lesson) {
        LibraryEntry entry = LIBRARY.entries().stream()
                .filter(some -> some.slug().equals(lesson.slug()))
                .findFirst()
                .orElseThrow();
        return entry.number().substring(0, 1);
    }

    /** Those the blocks name themselves, the learner's own left out. */
    private static Set<Key> majorKeysAskedIn(String book) {
        Set<Key> keys = new HashSet<>();
        LESSONS.stream()
                .filter(lesson -> book(lesson).equals(book))
                .flatMap(lesson -> lesson.parts().stream())
                .filter(Ask.class::isInstance)
                .map(part -> ((Ask) part).keys())
                .filter(asked -> !asked.toString().contains("same"))
                .forEach(asked -> asked.in(Key.parse("C")).forEach(keys::addAll));
        keys.removeIf(Key::isMinor);
        return keys;
    }

    @Test
    void showSoundAskAndEndAtTheKeyboard() {
        for (Lesson lesson : LESSONS) {
            assertTrue(has(lesson, LessonPart.Show.class), lesson.slug() + " shows nothing");
            assertTrue(
                    has(lesson, LessonPart.Listen.class) || has(lesson, LessonPart.Compare.class),
                    lesson.slug() + " is silent");
            assertTrue(has(lesson, Ask.class), lesson.slug() + " asks nothing");
            assertTrue(endsAtTheKeyboard(lesson), lesson.slug() + " ends without anything for the hands");
        }
    }

    /** With that heading, behind it at most the page of a book's end, and nothing asked. */
    private static boolean endsAtTheKeyboard(Lesson lesson) {
        List<LessonPart> behind = new ArrayList<>(lesson.parts());
        while (!(behind.get(0) instanceof ProsePart prose && headings(prose).contains("At the keyboard"))) {
            behind.remove(0);
            if (behind.isEmpty()) {
                return false;
            }
        }
        List<String> headings = behind.stream()
                .filter(ProsePart.class::isInstance)
                .flatMap(part -> headings((ProsePart) part).stream())
                .toList();
        List<String> last = headings.subList(headings.indexOf("At the keyboard") + 1, headings.size());
        return behind.stream().noneMatch(Ask.class::isInstance)
                && (last.isEmpty() || last.equals(List.of("What you can do now")));
    }

    private static List<String> headings(ProsePart prose) {
        return prose.blocks().stream()
                .filter(ProseBlock.Heading.class::isInstance)
                .map(heading -> heading.spans().get(0).text())
                .toList();
    }

    private static boolean has(Lesson lesson, Class<? extends LessonPart> kind) {
        return lesson.parts().stream().anyMatch(kind::isInstance);
    }

    @Test
    void goFromTheFirstStepToTheLast() {
        Ask ask = (Ask) lesson("the-chord-under-the-sixth").parts().stream()
                .filter(part ->
                        part instanceof Ask asked && asked.keys().toString().startsWith("F#"))
                .findFirst()
                .orElseThrow();
        assertEquals("F#, then C#, then Bb, Eb", ask.keys().toString());
        List<String> steps = List.of("F#", "C#", "Bb Eb");
        for (long seed = 0; seed < 20; seed++) {
            List<Question> questions = ask.questions(Key.parse("C"), seed);
            for (int i = 0; i < 3; i++) {
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
