package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import monochord.Thorough;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A verdict says what went wrong and where to look; the answer stays with the learner until it is asked for. By ear it is
 * otherwise: there both names are said, so that the two can be heard side by side.
 */
class NothingGivenAwayTest {
    private static final Set<AnswerForm> CERTAIN = EnumSet.of(
            AnswerForm.NOTES, AnswerForm.INTERVAL, AnswerForm.NUMERAL, AnswerForm.PROGRESSION, AnswerForm.NUMBER);
    private static final List<String> NONSENSE = List.of(
            "C",
            "Gb",
            "F#m",
            "Bdim",
            "Ebmaj7",
            "D/F#",
            "A E",
            "C E G",
            "Db F Ab C",
            "C D E F G A B",
            "A B C D E F G",
            "E F# G A B C D E",
            "H H H H",
            "W W H W W W W",
            "2 2 2",
            "ii",
            "bVI",
            "V7/V",
            "4",
            "3 flats",
            "5 sharps",
            "none",
            "P5",
            "minor third",
            "A4",
            "major",
            "diminished",
            "contrary",
            "still",
            "clash",
            "colour",
            "C dorian",
            "F minor",
            "1 4 5",
            "1 5 6- 4",
            "C F G",
            "Bb Eb F Gm",
            "C3 G3 | E4 C5",
            "C2 | D4",
            "F2 C3 | A3 Eb4");

    private static Stream<Question> questions() {
        return Stream.concat(
                Skills.all().stream()
                        .filter(skill -> !skill.id().startsWith("ear-"))
                        .flatMap(skill -> keys(skill).stream()
                                .flatMap(key -> skill.subjects(key).stream().map(s -> skill.question(key, s)))),
                Stream.of("C E", "C Eb", "E C", "F B", "B F", "Eb D", "A F#", "Gb Bb")
                        .map(notes -> Asked.question("interval", notes, "C")));
    }

    private static List<Key> keys(Skill skill) {
        List<Key> all = Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList();
        return Thorough.spread(all, 2, Skills.all().indexOf(skill));
    }

    private static List<String> offenders(Function<Question, Stream<String>> said) {
        Map<String, String> first = new LinkedHashMap<>();
        questions()
                .forEach(question -> said.apply(question)
                        .forEach(text -> first.putIfAbsent(
                                question.skillId() + text.replaceAll("[^a-z ]|\\b[a-g]\\b", ""),
                                question + ": " + text)));
        return List.copyOf(first.values());
    }

    private static List<String> answers(Question question) {
        List<String> answers = new ArrayList<>(NONSENSE);
        question.mistakes().forEach(mistake -> answers.add(mistake.answer()));
        String expected = question.expected();
        if (expected.contains(" ")) {
            answers.add(expected.substring(0, expected.lastIndexOf(' ')));
            answers.add(expected + " " + expected.substring(expected.lastIndexOf(' ') + 1));
            answers.add(expected.replaceAll("[^ ]+$", "A"));
            answers.add(expected.replaceAll("^[^ ]+", "B"));
            answers.add(expected + " F#");
        }
        return answers;
    }

    @Test
    @DisplayName("no wrong or nearly right answer is told the whole right one")
    void noVerdictSaysTheAnswer() {
        assertEquals(
                List.of(),
                offenders(question -> answers(question).stream()
                        .map(answer -> Map.entry(answer, question.judge(answer)))
                        .filter(judged -> isWrong(judged.getValue())
                                && Giveaway.isIn(judged.getValue().message().toString(), question))
                        .map(judged -> judged.getKey() + " >> "
                                + judged.getValue().message().toString())));
    }

    private static boolean isWrong(Verdict verdict) {
        return verdict.grade() == Grade.WRONG || verdict.grade() == Grade.NEARLY;
    }

    @Test
    @DisplayName("no hint says the whole answer, the third stops before the last step")
    void noHintSaysTheAnswer() {
        assertEquals(
                List.of(),
                offenders(question -> IntStream.range(0, 3)
                        .filter(i -> Giveaway.isIn(Asked.words(question.hints()).get(i), question))
                        .mapToObj(i -> "hint " + (i + 1) + " >> "
                                + Asked.words(question.hints()).get(i))));
    }

    @Test
    @DisplayName("a verdict takes two sentences, three with its opening, and reads in one breath")
    void verdictsAreShort() {
        assertEquals(
                List.of(),
                offenders(question -> answers(question).stream()
                        .map(question::judge)
                        .filter(verdict ->
                                isWrong(verdict) && isLong(verdict.message().toString()))
                        .map(verdict -> verdict.message().toString())));
    }

    private static boolean isLong(String message) {
        String said = message.replace("Nearly. ", "");
        return said.length() > 190 || said.split("[.?] ").length > 3;
    }

    @Test
    @DisplayName("the derivation does say it, so that the look for it can be trusted")
    void theDerivationSaysIt() {
        List<String> silent = questions()
                .filter(question -> CERTAIN.contains(question.form()))
                .filter(question -> question.form() != AnswerForm.NOTES
                        || question.expected().contains(" "))
                .filter(question -> !question.skillId().equals("common-tones"))
                .filter(question -> !Giveaway.isIn(question.derivation().toString(), question))
                .map(question -> question + ": " + question.derivation().toString())
                .limit(10)
                .toList();
        assertEquals(List.of(), silent);
    }
}
