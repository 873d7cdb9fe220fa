package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.lesson.Filling;
import monochord.lesson.Lesson;
import monochord.lesson.Part;
import monochord.lesson.Part.Ask;
import monochord.lesson.Part.Prose;
import monochord.lesson.TextRun;
import monochord.practice.Giveaway;
import monochord.practice.Question;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What our lessons ask: how much, of what, in which keys, after what was taught, and not right after it was told. */
class CourseQuestionsTest {
    private static final int MOST = 12;
    private static final int MOST_SCALES = 6;
    private static final int JUST_ABOVE = 600;
    /** Characters that fit on a screen of 22 lines and 80 columns with a heading and gaps between. */
    private static final int ONE_SCREEN = 17 * 72;

    /** Where the answer is one of few words, which the lesson must say to be understood. */
    private static final Set<String> OF_FEW_WORDS =
            Set.of("motion", "melody-fit", "next-chord", "chord-degree", "degree-quality", "borrowed-source", "steps");

    /** The lesson that teaches what a skill asks for. */
    private static final Map<String, String> SKILL_TAUGHT = Map.ofEntries(
            Map.entry("steps", "1.1"),
            Map.entry("interval", "1.1"),
            Map.entry("scale-spelling", "1.2"),
            Map.entry("key-signature", "1.3"),
            Map.entry("ear-interval", "1.5"),
            Map.entry("triad-spelling", "2.1"),
            Map.entry("degree-quality", "2.3"),
            Map.entry("degree-chord", "2.3"),
            Map.entry("chord-degree", "2.4"),
            Map.entry("progression-in-key", "2.4"),
            Map.entry("progression-numbers", "2.4"),
            Map.entry("ear-progression", "2.5"),
            Map.entry("inversion", "2.8"),
            Map.entry("ear-quality", "2.1"),
            Map.entry("common-tones", "3.1"),
            Map.entry("motion", "3.3"),
            Map.entry("voicing", "3.5"),
            Map.entry("seventh-spelling", "4.1"),
            Map.entry("applied-dominant", "4.4"),
            Map.entry("suspension", "4.5"),
            Map.entry("added-tone", "4.6"),
            Map.entry("lowered-degree", "5.1"),
            Map.entry("borrowed-source", "5.1"),
            Map.entry("borrowed-chord", "5.2"),
            Map.entry("next-chord", "5.10"),
            Map.entry("melody-fit", "6.2"),
            Map.entry("transposition", "6.6"));

    /** The lesson that teaches what a word of a subject names; the first that is found in the word counts. */
    private static final Map<Pattern, String> WORD_TAUGHT = new LinkedHashMap<>();

    static {
        taught("N6|b2|bII(?!I)", "5.9");
        taught("bIII|b3", "5.8");
        taught("bVII|b7", "5.3");
        taught("bVI(?!I)|b6", "5.2");
        taught("iv|ii[°o]|^4-", "5.4");
        taught("^i$", "5.1");
        taught("^v$", "9.9");
        taught("V7?/|[1-7]7/", "4.4");
        taught("(9|11|13)$", "4.6");
        taught("sus", "4.5");
        taught("add", "4.6");
        taught("maj7|m7|[IViv]7|[1-7]-?7$", "4.1");
        taught("dorian|phrygian|lydian|mixolydian", "1.9");
        taught("pentatonic|blues", "1.8");
        taught("harmonic|melodic|^minor$", "1.6");
        taught("[IViv]6", "2.8");
    }

    private static final Library LIBRARY = Library.in(Path.of("lessons"));
    private static final Map<String, Lesson> LESSONS = new LinkedHashMap<>();

    private static void taught(String word, String lesson) {
        WORD_TAUGHT.put(Pattern.compile(word), lesson);
    }

    @BeforeAll
    static void readAll() {
        LIBRARY.entries()
                .forEach(
                        entry -> LIBRARY.read(entry).lesson().ifPresent(lesson -> LESSONS.put(entry.number(), lesson)));
    }

    private static Stream<Ask> asks(Lesson lesson) {
        return lesson.parts().stream().filter(Ask.class::isInstance).map(Ask.class::cast);
    }

    private static int count(Lesson lesson, Predicate<String> skill) {
        return asks(lesson)
                .filter(ask -> skill.test(ask.skill().id()))
                .mapToInt(Ask::count)
                .sum();
    }

    private static int book(String number) {
        return Integer.parseInt(number.substring(0, number.indexOf('.')));
    }

    /** Lessons compare by book and place. */
    private static int place(String number) {
        return 100 * book(number) + Integer.parseInt(number.substring(number.indexOf('.') + 1));
    }

    @Test
    @DisplayName("at most twelve questions a lesson, and at most six whole scales")
    void askEnoughAndNoMore() {
        Map<String, Integer> tooMany = new TreeMap<>();
        LESSONS.forEach((number, lesson) -> {
            int all = count(lesson, skill -> true);
            int scales = count(lesson, "scale-spelling"::equals);
            if (all > MOST || scales > MOST_SCALES) {
                tooMany.put(number, all);
            }
        });
        assertEquals(Map.of(), tooMany);
        assertEquals(70, LESSONS.size());
    }

    @Test
    @DisplayName("from the third book on about a third of the questions is for the hands")
    void askTheHands() {
        int all = 0;
        int hands = 0;
        for (Map.Entry<String, Lesson> entry : LESSONS.entrySet()) {
            if (book(entry.getKey()) >= 3) {
                all += count(entry.getValue(), skill -> true);
                hands += count(entry.getValue(), Set.of("voicing", "motion")::contains);
            }
        }
        assertTrue(10 * hands >= 3 * all && 10 * hands <= 4 * all, hands + " of " + all);
    }

    @Test
    @DisplayName("no question of the first book lies in C♭ before 1.3 or in C♯ minor before 1.7")
    void keepTheFarKeysForLater() {
        List<String> early = new ArrayList<>();
        LESSONS.forEach((number, lesson) -> {
            if (book(number) == 1) {
                asks(lesson)
                        .flatMap(ask -> Key.majorKeys().stream()
                                .filter(key -> !ask.keys().toString().contains("same") || key.equals(Key.parse("C")))
                                .flatMap(key -> ask.questions(key, 5).stream()))
                        .filter(question -> isFar(question, number))
                        .forEach(question -> early.add(number + ": " + question));
            }
        });
        assertEquals(List.of(), early);
    }

    private static boolean isFar(Question question, String number) {
        String tonic = question.key().tonic().toString();
        boolean minor = question.key().isMinor() || question.subject().matches(".*(minor|dorian|phrygian).*");
        return tonic.equals("Cb") && (minor || place(number) < place("1.3"))
                || tonic.equals("C#") && minor && place(number) < place("1.7");
    }

    @Test
    @DisplayName("nothing is asked before the lesson that teaches it")
    void askWhatWasTaught() {
        Set<String> early = new TreeSet<>();
        LESSONS.forEach((number, lesson) -> asks(lesson).forEach(ask -> {
            String skill = ask.skill().id();
            if (place(number) < place(SKILL_TAUGHT.get(skill))) {
                early.add(number + " asks " + skill);
            }
            words(ask)
                    .filter(word -> place(number) < place(firstTaught(word)))
                    .forEach(word -> early.add(number + " asks " + skill + " of " + word));
        }));
        assertEquals(Set.of(), early);
    }

    /** Names of intervals and of single notes are no chords, and the lowered degrees are taught before their chords. */
    private static Stream<String> words(Ask ask) {
        String skill = ask.skill().id();
        boolean ofNotes =
                Set.of("interval", "ear-interval", "motion", "ear-quality").contains(skill);
        if (ofNotes
                || ask.keys().in(Key.parse("C")).stream().flatMap(List::stream).anyMatch(Key::isMinor)) {
            return Stream.empty();
        }
        Stream<String> subjects = ask.subject() == null
                ? Stream.of(3L, 4L, 5L)
                        .flatMap(seed -> ask.questions(Key.parse("C"), seed).stream())
                        .map(Question::subject)
                : ask.subjects().stream();
        return subjects.flatMap(subject -> Stream.of(subject.split("[ |]+")))
                .filter(word -> !skill.equals("lowered-degree") || word.equals("b2"));
    }

    private static String firstTaught(String word) {
        return WORD_TAUGHT.entrySet().stream()
                .filter(taught -> taught.getKey().matcher(word).find())
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("1.1");
    }

    /** Signs of the craft, and the lesson that explains them; a lesson before it may not use them. */
    @Test
    @DisplayName("numerals, ♭VI, double sharps and doubled signs stand in no lesson before they are explained")
    void useNothingBeforeItIsTaught() {
        Map<Pattern, String> signs = new LinkedHashMap<>();
        signs.put(Pattern.compile("(?<![\\w♭♯])(IV|VI{0,2}|I{2,3}|vi{0,2}°?|iv|ii{1,2}°?)(?![\\w])"), "2.3");
        signs.put(Pattern.compile("♭VI"), "5.2");
        signs.put(Pattern.compile("𝄪|𝄫"), "1.6");
        Map<String, String> early = new TreeMap<>();
        LESSONS.forEach((number, lesson) -> signs.forEach((sign, where) -> {
            String said =
                    String.join(" ", text(lesson, Key.parse("C"), lesson.parts().size()));
            if (place(number) < place(where)
                    && !(book(number) == 2)
                    && sign.matcher(said).find()) {
                early.put(number, sign.toString());
            }
        }));
        assertEquals(Map.of(), early);
    }

    @Test
    @DisplayName("counting from nought and counting from one are told apart where letters are first counted")
    void tellTheTwoCountsApart() {
        String said = String.join(
                " ",
                text(
                        LESSONS.get("1.5"),
                        Key.parse("C"),
                        LESSONS.get("1.5").parts().size()));
        assertTrue(said.contains("Half steps are still counted so. Letters are not: the letter you stand on is one."));
    }

    /** The paragraphs before a part. */
    private static List<String> text(Lesson lesson, Key key, int upTo) {
        Filling filling = new Filling(key);
        List<String> paragraphs = new ArrayList<>();
        for (Part part : lesson.parts().subList(0, upTo)) {
            if (part instanceof Prose prose) {
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

    @Test
    @DisplayName("no answer stands in the 600 characters above its question")
    void tellNoAnswerJustAbove() {
        Set<String> told = new TreeSet<>();
        for (Map.Entry<String, Lesson> entry : LESSONS.entrySet()) {
            for (Key key : Key.majorKeys()) {
                told.addAll(told(entry.getKey(), entry.getValue(), key));
            }
        }
        assertEquals("", String.join("\n", told));
    }

    private static List<String> told(String number, Lesson lesson, Key learners) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < lesson.parts().size(); i++) {
            if (lesson.parts().get(i) instanceof Ask ask && !ask.skill().id().startsWith("ear-")) {
                String all = String.join(" ", text(lesson, learners, i));
                String above = all.substring(Math.max(0, all.length() - JUST_ABOVE));
                ask.questions(learners, learners.tonic().fifths()).stream()
                        .filter(question -> tells(above, question, learners))
                        .forEach(question -> told.add(number + ": " + question + " = " + question.expected()));
            }
        }
        return told;
    }

    private static boolean tells(String above, Question question, Key learners) {
        String row = printed(question.expected());
        if (question.skillId().equals("melody-fit")) {
            return above.contains(printed(question.subject()));
        }
        if (OF_FEW_WORDS.contains(question.skillId())) {
            return false;
        }
        boolean spelled = row.split(" ").length >= 3 && above.contains(row);
        return spelled
                || Stream.of(above.split("(?<=[.;]) "))
                        .anyMatch(sentence -> isInItsKey(sentence, question) && tellsIt(sentence, question));
    }

    private static boolean isInItsKey(String sentence, Question question) {
        String tonic = question.key().tonic().write(Signs.MUSIC);
        return Pattern.compile("\\b[Ii]n " + tonic + "(?![♭♯\\w])")
                .matcher(sentence)
                .find();
    }

    private static boolean tellsIt(String sentence, Question question) {
        String expected = question.expected();
        boolean oneLetter = question.skillId().equals("lowered-degree") && expected.length() == 1;
        return oneLetter
                ? Pattern.compile("lowered.* is " + expected + "(?![♭♯\\w])")
                        .matcher(sentence)
                        .find()
                : Giveaway.isIn(sentence, question);
    }

    @Test
    @DisplayName(
            "each book ends with one screen: what you can do now, in which keys, and one thing to play to somebody")
    void endEachBookWithWhatOneCanDo() {
        Map<Integer, Lesson> last = new TreeMap<>();
        LESSONS.forEach((number, lesson) -> last.put(book(number), lesson));
        assertEquals(7, last.size());
        last.values().forEach(lesson -> {
            List<String> said = text(lesson, Key.parse("Db"), lesson.parts().size());
            int heading = said.lastIndexOf("What you can do now");
            assertEquals(said.size() - 3, heading, lesson.slug());
            String can = said.get(heading + 1);
            String toPlay = said.get(heading + 2);
            assertTrue(can.startsWith("You can ") && can.contains("fifteen"), can);
            assertTrue(toPlay.startsWith("To play to somebody: "), toPlay);
            assertTrue(can.length() + toPlay.length() < ONE_SCREEN, lesson.slug());
        });
    }

    private static String printed(String typed) {
        return typed.replace("##", "𝄪")
                .replaceAll("([A-G])x", "$1𝄪")
                .replaceAll("([A-G])bb", "$1𝄫")
                .replaceAll("([A-G])b", "$1♭")
                .replace("#", "♯")
                .replaceAll("\\bb(?=[1-7IViv])", "♭");
    }
}
