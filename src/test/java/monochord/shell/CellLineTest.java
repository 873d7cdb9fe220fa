package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Json;
import monochord.shell.answer.Look;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import org.jline.reader.Candidate;
import org.jline.reader.Parser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Java at the line: the words at hand, values as music, variables in verbs, messages, completion. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class CellLineTest {
    private static final Sitting SITTING =
            new Run.Outside().around(null, null, null).sitting();
    private static final Reading READING = new Reading(new Verbs(), SITTING);
    private static final Reading VERBS =
            new Reading(new Verbs(), new Run.Outside().around(null, null, null).sitting());

    @AfterAll
    static void close() {
        SITTING.cells().close();
    }

    private static String says(Reading reading, String line) {
        return reading.read(line).text(Look.ofPipe()).plain().strip();
    }

    private static String says(String line) {
        return says(READING, line);
    }

    /** What a word gives is shown as the verb shows it. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            key("D")                                     | key D
            key()                                        | key C
            chord("Abmaj7")                              | show Abmaj7
            scale("E harmonic minor")                    | show E harmonic minor
            notes("C E G")                               | show C, E, G
            pitches("C4 E4 G4")                          | show C4 E4 G4
            numeral("V7", key("C"))                      | show G7
            numeral("bVI", key("C"))                     | show Ab
            progression("F C G Ab")                      | F C G Ab
            progression("4 1 5 b6", "D")                 | show 4 1 5 b6 in D
            progression("4 1 5 b6", key("D"))            | show 4 1 5 b6 in D
            progression("F C").chords()                  | F C
            progression(List.of(chord("F"), chord("C"))) | F C
            borrowed(key("D"))                           | borrow in D
            chord("C").plus(Interval.parse("m6")) | show Ab
            """)
    void aValueIsShownAsMusic(String java, String verb) {
        assertEquals(says(VERBS, verb), says(java));
    }

    /** A voicing knows of no next best one, the verb says what it would cost. */
    @Test
    void aVoicingIsShownAsTheVerbShowsIt() {
        String verb = says(VERBS, "voice F C G Ab in C").replaceFirst("; the next best .*", ".");
        assertEquals(verb, says("voice(progression(\"F C G Ab\"))"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            numeral(chord("Bb"), key("D"))    | bVI
            chord("Ab").root()                | Ab
            int many = 3                      | many = 3
            int none                          | none = 0
            String nothing = null             | nothing = null
            "a" + 1                           | "a1"
            List.of(1, 2, 3)                  | [1, 2, 3]
            new int[] {1, 2}                  | [1, 2]
            var thing = new Object()          | thing = an Object
            Runnable later = () -> { }        | later = a function
            List.of("F", "C").stream()        | a stream, seen only once it is gathered: add .toList()
            System.out.println("one")         | one
            int half(int n) { return n / 2; } | half(int) is known from now on.
            record Song(String name) { }      | Song is known from now on.
            """)
    void whatIsNoMusicIsShownAsText(String java, String shown) {
        assertEquals(shown, says(java));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            chrod("Ab")                    | There is no chrod() here. Did you mean chord?/  chrod("Ab")/  ^
            chord("Ab", 3)                 | chord() takes String, and is given String and int./  chord("Ab", 3)/  ^
            int x = "a"                    | This is a String, and an int is wanted./  int x = "a"/          ^
            chord("Ab").rot()              | There is no rot() in a Chord./  chord("Ab").rot()/             ^
            chord("Ab)                     | The text that begins here is not closed with "./  chord("Ab)/        ^
            var y = 1 + # 2                | Java has no use for this sign here./  var y = 1 + # 2/              ^
            chord("Hm")                    | "Hm" is not a chord: expected a letter from A to G at character 1, found 'H'./Example: Abmaj7
            List.of(1, 2).get(9)           | There is no element 9: there are 2, counted from 0.
            1 / 0                          | Nothing can be divided by 0.
            show(3)                        | 3 is not music, so it can be neither shown nor played.
            String s = null; s.length()    | s = null/Something is asked of null, which is nothing. Cannot invoke "String.length()"/because "s" is null
            throw new RuntimeException()   | RuntimeException.
            Integer.parseInt("a")          | NumberFormatException: For input string: "a"
            """)
    void whatGoesWrongIsToldInWordsAndWithItsPlace(String java, String told) {
        String said = says(java);
        assertEquals(told.replace('/', '\n').replace("\n 0", "/ 0"), said);
        assertTrue(said.lines().noneMatch(line -> line.contains("\tat ")), said);
    }

    @Test
    void aVariableStandsInASentence() {
        says("var verse = progression(\"F C G Ab\")");
        assertEquals(says(VERBS, "show F C G Ab in D"), says("show $verse in D"));
        assertEquals(says(VERBS, "transpose F C G Ab from C to D"), says("transpose $verse from C to D"));
        says("var home = key(\"D\")");
        says("int beats = 84");
        assertTrue(says("play $verse in $home at $beats").startsWith("Playing F C G A♭ in D major at 84."));
    }

    @Test
    void whatIsNoVariableOrNoMusicIsToldWithItsPlace() {
        assertEquals(
                "{\"error\":\"\\\"F in $nowhere\\\" is not a sentence: the cell has no nowhere. Example: var verse ="
                        + " \\\"F C G Ab\\\", then play $verse in C\",\"at\":6}",
                json(READING.read("show F in $nowhere")).replaceFirst(",\"advice.*}", "}"));
        says("var stone = new Object()");
        assertTrue(
                says("show C in $stone")
                        .replace('\n', ' ')
                        .startsWith(
                                "\"C in $stone\" is not a sentence: stone is no music, text or number that a verb could read."));
    }

    private static String json(Answer answer) {
        Json object = new Json();
        answer.json(object);
        return object.toString();
    }

    /** In a cell and in a verb alike, the last that was shown is what {@code play} alone plays. */
    @Test
    void playAndShowReachTheLine() {
        assertEquals(says(VERBS, "show Abmaj7"), says("show(\"Abmaj7\")"));
        assertTrue(says("play").startsWith("Playing A♭maj7"), says("play"));
        assertTrue(says("play(\"F C\", 90); play(chord(\"G\"))").startsWith("Playing F C"));
    }

    @Test
    void theCellKnowsTheKeyOfTheLine() {
        says("key Eb");
        assertEquals("Eb major", says("key().toString()").replace("\"", ""));
        assertEquals(says(VERBS, "show 4 1 in Eb"), says("progression(\"4 1\")"));
        says("key C");
    }

    private static List<String> offers(String line) {
        List<Candidate> candidates = new ArrayList<>();
        new Completion(new Verbs(), SITTING)
                .complete(null, new Words().parse(line, line.length(), Parser.ParseContext.COMPLETE), candidates);
        return candidates.stream().map(Candidate::value).toList();
    }

    @Test
    void javaAndMusicAreCompletedTogether() {
        says("var chorus = progression(\"F C\")");
        List<String> both = offers("cho");
        assertTrue(both.containsAll(List.of("chord(", "chorus", "show")), both.toString());
        assertTrue(
                offers("chorus.").contains("chorus.chords()"), offers("chorus.").toString());
        assertTrue(offers("play $").contains("$chorus"), offers("play $").toString());
        assertTrue(
                offers("var x = chor").contains("chorus"),
                offers("var x = chor").toString());
        assertTrue(offers("show C in E").contains("Eb"), offers("show C in E").toString());
        assertTrue(offers("show C in E").stream().noneMatch(text -> text.contains("(")), "no Java in a sentence");
    }
}
