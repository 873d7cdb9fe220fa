package monochord.lesson.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.lesson.Lesson;
import monochord.lesson.LessonPart.Ask;
import monochord.practice.Giveaway;
import monochord.practice.Question;
import monochord.theory.Key;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What our lessons ask: how much, of what, and not right after it was told. */
class CourseQuestionsTest {
    private static final int MOST = 12;
    private static final int MOST_SCALES = 6;
    private static final int JUST_ABOVE = 600;
    /** Characters that fit on a screen of 22 lines and 80 columns with a heading and gaps between. */
    private static final int ONE_SCREEN = 17 * 72;

    /** Where the answer is one of few words, which the lesson must say to be understood. */
    private static final Set<String> OF_FEW_WORDS =
            Set.of("motion", "melody-fit", "next-chord", "chord-degree", "degree-quality", "borrowed-source", "steps");

    private static int count(Lesson lesson, Predicate<String> skill) {
        return OurLessons.asks(lesson)
                .filter(ask -> skill.test(ask.skill().id()))
                .mapToInt(Ask::count)
                .sum();
    }

    @Test
    @DisplayName("at most twelve questions a lesson, and at most six whole scales")
    void askEnoughAndNoMore() {
        Map<String, Integer> tooMany = new TreeMap<>();
        OurLessons.BY_NUMBER.forEach((number, lesson) -> {
            int all = count(lesson, skill -> true);
            int scales = count(lesson, "scale-spelling"::equals);
            if (all > MOST || scales > MOST_SCALES) {
                tooMany.put(number, all);
            }
        });
        assertEquals(Map.of(), tooMany);
        assertEquals(70, OurLessons.BY_NUMBER.size());
    }

    @Test
    @DisplayName("a lesson that asks eight questions or more asks for two skills or for three subjects")
    void mixWhatTheyAsk() {
        Set<String> monotonous = new TreeSet<>();
        OurLessons.BY_NUMBER.forEach((number, lesson) -> {
            long skills = OurLessons.asks(lesson)
                    .map(ask -> ask.skill().id())
                    .distinct()
                    .count();
            boolean freely = OurLessons.asks(lesson).anyMatch(ask -> ask.subject() == null);
            long subjects = OurLessons.asks(lesson)
                    .flatMap(ask -> ask.subjects().stream())
                    .distinct()
                    .count();
            if (count(lesson, skill -> true) >= 8 && skills < 2 && subjects < 3 && !freely) {
                monotonous.add(number);
            }
        });
        assertEquals(Set.of(), monotonous);
    }

    @Test
    @DisplayName("from the third book on about a third of the questions is for the hands")
    void askTheHands() {
        int all = 0;
        int hands = 0;
        for (Map.Entry<String, Lesson> entry : OurLessons.BY_NUMBER.entrySet()) {
            if (OurLessons.book(entry.getKey()) >= 3) {
                all += count(entry.getValue(), skill -> true);
                hands += count(entry.getValue(), Set.of("voicing", "motion")::contains);
            }
        }
        assertTrue(10 * hands >= 3 * all && 10 * hands <= 4 * all, hands + " of " + all);
    }

    @Test
    @DisplayName("no answer stands in the 600 characters above its question")
    void tellNoAnswerJustAbove() {
        Set<String> told = new TreeSet<>();
        for (Map.Entry<String, Lesson> entry : OurLessons.BY_NUMBER.entrySet()) {
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
                String all = String.join(" ", OurLessons.paragraphs(lesson, learners, i));
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
                || above.contains(" above " + question.key().tonic().write(Signs.MUSIC) + " is " + row + ",")
                || Stream.of(above.split("(?<=[.;]) ")).anyMatch(sentence -> tellsSigns(sentence, question))
                || Stream.of(above.split("(?<=[.;]) "))
                        .anyMatch(sentence -> isInItsKey(sentence, question) && tellsIt(sentence, question));
    }

    /** {@code For E: … F♯ C♯ G♯ D♯.} where the signature of E is asked. */
    private static boolean tellsSigns(String sentence, Question question) {
        if (!question.skillId().equals("key-signature")) {
            return false;
        }
        int signs =
                Integer.parseInt(question.expected().replaceAll("[^0-9]", "0").substring(0, 1));
        boolean sharp = question.expected().contains("sharp");
        String letters = sharp ? "FCGDAEB" : "BEADGCF";
        String row = letters.substring(0, signs)
                .replaceAll("(?<=.)", sharp ? "♯ " : "♭ ")
                .strip();
        String tonic = question.key().tonic().write(Signs.MUSIC);
        return signs > 1
                && Pattern.compile("\\b" + tonic + "(?![♭♯\\w]).*(?<![♭♯] )" + row + "(?! [A-G][♭♯])")
                        .matcher(sentence)
                        .find();
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
        OurLessons.BY_NUMBER.forEach((number, lesson) -> last.put(OurLessons.book(number), lesson));
        assertEquals(7, last.size());
        last.values().forEach(lesson -> {
            List<String> said = OurLessons.paragraphs(
                    lesson, Key.parse("Db"), lesson.parts().size());
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
