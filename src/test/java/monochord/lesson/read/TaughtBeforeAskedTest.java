package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Question;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Nothing is asked or written in our lessons before the lesson that teaches it. */
class TaughtBeforeAskedTest {
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

    private static void taught(String word, String lesson) {
        WORD_TAUGHT.put(Pattern.compile(word), lesson);
    }

    @Test
    @DisplayName("no question of the first book lies in C♭ before 1.3 or in C♯ minor before 1.7")
    void keepTheFarKeysForLater() {
        List<String> early = new ArrayList<>();
        OurLessons.BY_NUMBER.forEach((number, lesson) -> {
            if (OurLessons.book(number) == 1) {
                OurLessons.asks(lesson)
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
        return tonic.equals("Cb") && (minor || OurLessons.place(number) < OurLessons.place("1.3"))
                || tonic.equals("C#") && minor && OurLessons.place(number) < OurLessons.place("1.7");
    }

    @Test
    @DisplayName("nothing is asked before the lesson that teaches it")
    void askWhatWasTaught() {
        Set<String> early = new TreeSet<>();
        OurLessons.BY_NUMBER.forEach((number, lesson) -> OurLessons.asks(lesson).forEach(ask -> {
            String skill = ask.skill().id();
            if (OurLessons.place(number) < OurLessons.place(SKILL_TAUGHT.get(skill))) {
                early.add(number + " asks " + skill);
            }
            words(ask)
                    .filter(word -> OurLessons.place(number) < OurLessons.place(firstTaught(word)))
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
        OurLessons.BY_NUMBER.forEach((number, lesson) -> signs.forEach((sign, where) -> {
            if (OurLessons.place(number) < OurLessons.place(where)
                    && !(OurLessons.book(number) == 2)
                    && sign.matcher(OurLessons.said(lesson)).find()) {
                early.put(number, sign.toString());
            }
        }));
        assertEquals(Map.of(), early);
    }

    @Test
    @DisplayName("counting from nought and counting from one are told apart where letters are first counted")
    void tellTheTwoCountsApart() {
        String said = OurLessons.said(OurLessons.BY_NUMBER.get("1.5"));
        assertTrue(said.contains("Half steps are still counted so. Letters are not: the letter you stand on is one."));
    }
}
