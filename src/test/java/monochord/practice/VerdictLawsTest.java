package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.Thorough;
import monochord.practice.skill.Skills;
import monochord.theory.Key;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Holds for every wrong procedure of every skill in fifteen keys, typed in ten customary ways: how it is typed changes
 * nothing, and no sentence says what is untrue of the learner's own notes.
 */
class VerdictLawsTest {
    /** As people write an answer down; none of these changes what it says. Common practice, no source. */
    private static final List<UnaryOperator<String>> WAYS = List.of(
            answer -> answer,
            answer -> answer + ".",
            answer -> "(" + answer + ")",
            answer -> answer + ", I think",
            answer -> "I think it's " + answer,
            answer -> "the answer is " + answer,
            answer -> "or maybe " + answer + "...",
            answer -> "\"" + answer + "\"",
            answer -> "  " + answer.replace(" ", "  ") + " !",
            answer -> "hmm, perhaps " + answer);

    private static final String NOTE = "(?<![A-Za-z])[A-G](?:♭♭|♭|♯|𝄪|𝄫)?(?![A-Za-z♭♯])";
    private static final Pattern ARE_RIGHT =
            Pattern.compile("((?:" + NOTE + ", )*(?:" + NOTE + " and )?" + NOTE + ") (?:is|are) right");
    private static final Pattern HAS_FOR = Pattern.compile("Where you have (" + NOTE + ")");
    private static final Pattern IS_NOT = Pattern.compile("(" + NOTE + ") is not: the");
    private static final Pattern TOO_MANY =
            Pattern.compile("((?:" + NOTE + " and )?" + NOTE + ") (?:is one note|are \\w+ notes) too many");
    private static final Pattern MISSING = Pattern.compile("((?:" + NOTE + " and )?" + NOTE + ") (?:is|are) missing");

    /** One wrong answer to one question. */
    private record Case(Question question, String answer) {}

    private static final List<Case> CASES = new ArrayList<>();

    @BeforeAll
    static void gather() {
        for (Skill skill : Skills.all()) {
            List<Key> keys = skill.keys();
            for (Key key : Thorough.spread(keys, 3, Skills.all().indexOf(skill))) {
                for (String subject : skill.subjects(key)) {
                    Question question = skill.question(key, subject);
                    question.mistakes().forEach(mistake -> CASES.add(new Case(question, mistake.answer())));
                    lessAndMore(question).forEach(answer -> CASES.add(new Case(question, answer)));
                }
            }
        }
        assertTrue(CASES.size() > 2400, () -> "only " + CASES.size() + " answers");
    }

    /** The right row with a note too few, and with one too many. */
    private static List<String> lessAndMore(Question question) {
        String expected = question.expected();
        int last = expected.lastIndexOf(' ');
        return question.form() != AnswerForm.NOTES || last < 0
                ? List.of()
                : List.of(
                        expected.substring(0, last),
                        expected.substring(expected.indexOf(' ') + 1),
                        expected.substring(0, last) + " A#",
                        expected + " F#");
    }

    private static String told(Case one, String typed) {
        Verdict verdict = one.question().judge(typed);
        return verdict.grade() + " " + verdict.misconception() + " " + verdict.message();
    }

    @Test
    @DisplayName("ten customary ways to type an answer are told the same")
    void typedAsPeopleDo() {
        Set<String> faults = new TreeSet<>();
        for (Case one : CASES) {
            String plain = told(one, one.answer());
            for (int way = 1; way < WAYS.size(); way++) {
                String typed = WAYS.get(way).apply(one.answer());
                String other = told(one, typed);
                if (!other.equals(plain)) {
                    faults.add(one.question().skillId() + " " + way + ": " + typed + " >> " + other + " << " + plain);
                }
            }
        }
        assertEquals("", faults.stream().limit(20).collect(Collectors.joining("\n")));
    }

    private static Set<String> notes(String text) {
        return Pattern.compile(NOTE)
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The notes of an answer in ASCII; none where it is not one of notes. */
    private static Set<String> notesOf(String ascii) {
        return Arrays.stream(ascii.split(" ")).map(Writings::signs).collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<Set<String>> named(Pattern claim, String message) {
        Matcher found = claim.matcher(message);
        return found.results().map(one -> notes(one.group(1))).toList();
    }

    private static void hold(Pattern claim, boolean typed, boolean due) {
        Set<String> faults = new TreeSet<>();
        int seen = 0;
        for (Case one : CASES) {
            if (one.question().form() != AnswerForm.NOTES) {
                continue;
            }
            Verdict verdict = one.question().judge(one.answer());
            String said = verdict.message() + " " + one.question().hintsFrom(one.answer());
            for (Set<String> notes : named(claim, said)) {
                seen++;
                boolean holds = notes.stream()
                        .allMatch(note -> notesOf(one.answer()).contains(note) == typed
                                && notesOf(one.question().expected()).contains(note) == due);
                if (!holds) {
                    faults.add(one.question() + ", " + one.answer() + ": " + said);
                }
            }
        }
        assertEquals("", faults.stream().limit(20).collect(Collectors.joining("\n")));
        int met = seen;
        assertTrue(met > 0 || claim == MISSING, () -> claim + " was met " + met + " times");
    }

    @Test
    @DisplayName("what is called right was typed and is in the right answer")
    void whatIsRightIsRight() {
        hold(ARE_RIGHT, true, true);
    }

    @Test
    @DisplayName("what is called wrong or too many was typed and is not in the right answer")
    void whatIsWrongIsWrong() {
        hold(HAS_FOR, true, false);
        hold(IS_NOT, true, false);
        hold(TOO_MANY, true, false);
    }

    @Test
    @DisplayName("what is called missing was not typed")
    void whatIsMissingIsMissing() {
        hold(MISSING, false, true);
    }

    @Test
    @DisplayName("no help from a wrong answer names what is missing from it")
    void helpNamesNothingThatIsMissing() {
        Set<String> faults = new TreeSet<>();
        for (Case one : CASES) {
            boolean row = one.question().form() == AnswerForm.NOTES
                    && one.question().expected().contains(" ");
            if (!row || one.question().skillId().equals("common-tones")) {
                continue;
            }
            Set<String> missing = notesOf(one.question().expected());
            missing.removeAll(notesOf(one.answer()));
            List<String> help = one.question().hintsFrom(one.answer()).stream()
                    .map(Object::toString)
                    .toList();
            boolean own = help.equals(Asked.words(one.question().hints()));
            if (!own
                    && help.stream().anyMatch(said -> notes(said).stream().anyMatch(missing::contains))
                    && !help.toString().contains("The root")) {
                faults.add(one.question() + ", " + one.answer() + ": " + help);
            }
        }
        assertEquals("", faults.stream().limit(20).collect(Collectors.joining("\n")));
    }

    @Test
    @DisplayName("what nobody can read is told so in one line and is no answer, whatever is asked")
    void unreadable() {
        List<String> texts = List.of(
                "x".repeat(10_000),
                "A ".repeat(5_000),
                "\u0000\u0001\u001b[31mBb",
                "\u0007",
                "Ля мажор",
                "ソ シ レ",
                "ラ",
                "...",
                "?!?",
                "()",
                "---,;",
                "");
        for (Skill skill : Skills.all()) {
            Question question = skill.question(skill.keys().get(0), 1);
            for (String text : texts) {
                Verdict verdict = question.judge(text);
                assertEquals(Grade.UNREADABLE, verdict.grade(), () -> question + " reads " + text);
                String told = verdict.message().toString();
                assertTrue(told.length() < 200 && told.chars().noneMatch(Character::isISOControl), told);
            }
        }
    }
}
