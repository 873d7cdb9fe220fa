package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import monochord.course.Course;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import org.jline.reader.Candidate;
import org.jline.reader.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompletionTest {
    private static final List<String> VERBS = List.of(
            "key",
            "show",
            "name",
            "numeral",
            "borrow",
            "after",
            "motion",
            "transpose",
            "play",
            "compare",
            "tempo",
            "patch",
            "bank",
            "stop",
            "lessons",
            "learn",
            "ask",
            "practise",
            "review",
            "progress",
            "hint",
            "tell",
            "why",
            "skip",
            "check",
            "present",
            "back",
            "help",
            "quit");

    private static List<String> offers(String line) {
        Sitting sitting = new Sitting(Ear.silent(), () -> 7, Path.of(""), new Course(Run.OUR_LESSONS));
        List<Candidate> candidates = new ArrayList<>();
        new Completion(new Verbs(), sitting)
                .complete(
                        null,
                        new CompletionParser().parse(line, line.length(), Parser.ParseContext.COMPLETE),
                        candidates);
        return candidates.stream().map(Candidate::value).toList();
    }

    @Test
    void verbsBeginALine() {
        assertTrue(offers("").containsAll(VERBS), () -> offers("").toString());
        assertEquals(offers(""), offers("sh"));
    }

    /** Source: the fifteen signatures, twice; arithmetic. */
    @ParameterizedTest(name = "<{0}>")
    @CsvSource(quoteCharacter = '`', textBlock = """
            `show IV I in `
            `show IV I In `
            `play 4 1 5 in E`
            `transpose C from `
            `transpose C from C to `
            """)
    void allThirtyKeysFollowInFromAndTo(String line) {
        List<String> offers = offers(line);
        assertEquals(
                30, offers.stream().filter(key -> key.matches("[A-G][b#]?m?")).count(), offers::toString);
        assertTrue(offers.containsAll(List.of("C", "Eb", "F#", "Cb", "Am", "Ebm", "G#m")), offers::toString);
    }

    @Test
    void aKeyIsNamedInTwoWords() {
        assertTrue(
                offers("key ").containsAll(List.of("C", "Gb", "F#", "D#")),
                () -> offers("key ").toString());
        assertEquals(List.of("major", "minor"), offers("KEY e "));
    }

    @Test
    void aScaleIsNamedBehindItsTonic() {
        assertEquals(List.of("minor", "in", "staff"), offers("show E harmonic "));
        assertTrue(offers("show E ").containsAll(List.of("major", "harmonic", "dorian", "in")));
    }

    @Test
    void patchesFollowWithWordByWord() {
        assertTrue(offers("play C with ").containsAll(List.of("Electric", "Church", "Vibraphone")));
        assertFalse(offers("play C with ").contains("Piano"));
        assertEquals(
                List.of("Organ", "as", "at", "count-in", "in", "loop", "metre", "over", "swing", "with"),
                offers("play C with church ").stream()
                        .sorted(java.util.Comparator.comparing(String::toString))
                        .toList());
        assertFalse(offers("play ").contains("Church"), "a patch is no music");
    }

    @Test
    void instrumentsFollowForWordByWord() {
        assertTrue(
                offers("transpose C for ").containsAll(List.of("alto", "clarinet")),
                () -> offers("transpose C for ").toString());
        assertTrue(
                offers("transpose C for alto ").contains("sax"),
                () -> offers("transpose C for alto ").toString());
    }

    @Test
    void lessonsFollowLearnByTheirNumbers() {
        List<String> offered = offers("learn ");
        assertEquals(72, offered.size(), offered.toString());
        assertTrue(offered.containsAll(List.of("1.1", "1.9", "3.7", "5.10", "6.9", "in", "as")), offered.toString());
    }

    @Test
    void skillsFollowAsk() {
        assertTrue(offers("ask ")
                .containsAll(List.of(
                        "steps",
                        "scale-spelling",
                        "key-signature",
                        "interval",
                        "triad-spelling",
                        "degree-quality",
                        "degree-chord",
                        "chord-degree",
                        "lowered-degree",
                        "borrowed-chord",
                        "borrowed-source",
                        "progression-in-key",
                        "progression-numbers")));
    }

    @Test
    void verbsFollowHelpAndSmallWordsFollowWhatTheyBelongTo() {
        assertTrue(offers("help ").containsAll(VERBS));
        assertTrue(offers("play IV I ").containsAll(List.of("in", "at", "with")));
        assertTrue(offers("transpose C ").containsAll(List.of("from", "to", "for", "capo")));
        assertFalse(offers("quit ").contains("in"));
    }

    @Test
    void optionsFollowTwoHyphens() {
        assertTrue(offers("play F C --").containsAll(List.of("--wav", "--midi")));
        assertTrue(offers("ask interval --s").contains("--seed"));
        assertFalse(offers("play F C ").contains("--wav"));
        assertEquals(List.of(), offers("F C --"));
    }

    @Test
    void nothingFollowsAWordThatIsNoVerb() {
        assertEquals(List.of(), offers("F C "));
        assertEquals(List.of(), offers("xyz \"a b"));
    }
}
