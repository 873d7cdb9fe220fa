package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import org.jline.reader.Candidate;
import org.jline.reader.Parser;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Java at the line: the words at hand, values as music, variables in verbs, messages, completion. */
class CellLineTest {
    private static final int PATIENCE = 25;

    private static final Sitting SITTING =
            new Run.Outside().around(null, null, null).sitting();
    private static final LineReading READING = new LineReading(new Verbs(), SITTING);
    private static final LineReading VERBS = new LineReading(
            new Verbs(), new Run.Outside().around(null, null, null).sitting());

    @AfterAll
    static void close() {
        SITTING.cells().close();
    }

    private static String says(LineReading reading, String line) {
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
            numeral("bVI", "C")                          | show Ab
            numeral("bVI")                               | show Ab
            numeral("b6")                                | show Ab
            numeral("6-")                                | show Am
            show(numeral("bVI", "D"), "D")               | show bVI in D
            show("bVI", key("D"))                        | show bVI in D
            show("F C", "F")                             | show F C in F
            show(notes("C E G"), "F")                    | show C, E, G in F
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

    @Test
    void aVoicingIsShownAsTheVerbShowsIt() {
        String verb = says(VERBS, "voice F C G Ab in C");
        assertEquals(verb, says("voice(progression(\"F C G Ab\"))"));
        assertEquals(verb, says("voice(\"F C G Ab\")"));
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
            String s = null; s.length()    | s = null/s is null, which is nothing, and cannot be asked for length().
            throw new RuntimeException()   | RuntimeException.
            Integer.parseInt("a")          | NumberFormatException: For input string: "a"
            """)
    void whatGoesWrongIsToldInWordsAndWithItsPlace(String java, String told) {
        String said = says(java);
        assertEquals(told.replace('/', '\n').replace("\n 0", "/ 0"), said);
        assertTrue(said.lines().noneMatch(line -> line.contains("\tat ")), said);
    }

    /** What somebody types in the first week, and what the compiler makes of it: the tokens of the JDK's own messages. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
            int a = 3; for (;;) { show(a) }         | a = 3\\A semicolon ; is missing here.\\  int a = 3; for (;;) { show(a) }\\                               ^
            chord("Ab"))                            | This ) closes nothing.\\  chord("Ab"))\\             ^
            List.of("C" "D")                        | A ) or a comma is missing here.\\  List.of("C" "D")\\             ^
            for i in 1..4 { }                       | A ( is missing here.\\  for i in 1..4 { }\\     ^
            chord("Ab"                              | A bracket ) is missing at the end.\\  chord("Ab"\\            ^
            if (true) { show(chord("Ab"             | Brackets are missing at the end: ) ) }\\  if (true) { show(chord("Ab"\\                             ^
            else a = 3;                             | This else has no if before it: write both in one line, if (…) …; else …;\\  else a = 3;\\  ^
            var x = 1 +                             | Something is missing at the end.\\  var x = 1 +\\             ^
            chord(Ab)                               | Music stands in quotation marks in Java: "Ab".\\  chord(Ab)\\        ^
            chord('Ab')                             | Music stands in quotation marks in Java: "Ab".\\  chord('Ab')\\         ^
            progression(F C G Ab, "C")              | Music stands in quotation marks in Java: "F C G Ab".\\  progression(F C G Ab, "C")\\              ^
            key(D major)                            | Music stands in quotation marks in Java: "D major".\\  key(D major)\\      ^
            numeral(bVI, key("D"))                  | Music stands in quotation marks in Java: "bVI".\\  numeral(bVI, key("D"))\\          ^
            String s = 'so it is'                   | Text stands in double quotation marks: "so".\\  String s = 'so it is'\\             ^
            Chord c = "Ab"                          | This is a String, and a Chord is wanted: chord("…") makes one of it.\\  Chord c = "Ab"\\            ^
            borrowed("D")                           | This is a String, and a Key is wanted: key("…") makes one of it.\\  borrowed("D")\\           ^
            int i = 1.5                             | This is a double, and an int is wanted. Say (int) before it to cut it.\\  int i = 1.5\\          ^
            string t = "a"                          | There is no string here. Did you mean String?\\  string t = "a"\\  ^
            print("x")                              | There is no print() here. System.out.println(…) prints.\\  print("x")\\  ^
            chord("Ab").tones                       | There is no tones in a Chord, but perhaps tones().\\  chord("Ab").tones\\             ^
            key("D").tonic                          | tonic is what a Key keeps to itself; perhaps tonic() tells it.\\  key("D").tonic\\          ^
            Chord.root()                            | root is asked of a value, not of its class.\\  Chord.root()\\       ^
            chord("C") + chord("G")                 | A Chord and a Chord cannot be joined by +.\\  chord("C") + chord("G")\\             ^
            numeral(1, key("D"))                    | numeral() takes Chord and Key, or String and Key, or String and String; it is\\given int and Key.\\  numeral(1, key("D"))\\  ^
            for (var n : chord("C")) show(n)        | This is no list, and cannot be gone through one by one.\\  for (var n : chord("C")) show(n)\\                    ^
            int f(int n) { }                        | The method ends here and gives nothing back: a return is missing.\\  int f(int n) { }\\                 ^
            void g() { return 5; }                  | This gives nothing back, so nothing stands behind return.\\  void g() { return 5; }\\                    ^
            var b = null                            | A var needs a value that says what it is.\\  var b = null\\      ^
            var b                                   | A var needs a value that says what it is.\\  var b\\      ^
            List<int> l = null                      | A class is wanted here: for int that is Integer.\\  List<int> l = null\\       ^
            int z() { int q; return q; }            | q has no value yet.\\  int z() { int q; return q; }\\                          ^
            key("D") = 3                            | Only a variable can be given a value.\\  key("D") = 3\\     ^
            int big = 3000000000                    | This number is too large for an int.\\  int big = 3000000000\\            ^
            chord("C") == "C"                       | These two are of different kinds and never equal.\\  chord("C") == "C"\\             ^
            """)
    void aMistakeOfTheFirstWeekIsToldInWordsAndWithItsPlace(String java, String told) {
        assertEquals(told.replace('\\', '\n'), says(java));
    }

    /** A class of ours is called like a verb; small letters and no value are the verb's. */
    @Test
    void aVariableOfAClassThatIsCalledLikeAVerbIsJava() {
        assertEquals(says(VERBS, "key D"), says("Key home = key(\"D\")"));
        assertEquals(says(VERBS, "key D"), says("Key D"));
        says("key C");
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
                "{\"kind\":\"error\",\"error\":\"\\\"F in $nowhere\\\" is not a sentence: the cell has no nowhere. Example: var verse ="
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

    /** A value that is music is shown in the learner's names; what Java says and is told stays Java. */
    @Test
    void javaKeepsEnglishNames() {
        assertTrue(saysInGerman("chord(\"B\")").startsWith("H  H Dis Fis"));
        assertEquals("Bb", saysInGerman("chord(\"Bb\").root()"));
        assertEquals("B flat is Bb", saysInGerman("System.out.println(\"B flat is \" + chord(\"Bb\"))"));
        assertEquals(
                "\"H\" is not a chord: expected a letter from A to G at character 1, found 'H'.\nExample: Abmaj7\n"
                        + "In Java notes go by their English names.",
                saysInGerman("chord(\"H\")"));
        String help = saysInGerman("help java");
        assertTrue(help.contains("chord(\"Bbmaj7\")"), help);
    }

    private static String saysInGerman(String line) {
        Look german = Look.ofPipe().naming(NoteNaming.GERMAN);
        return READING.read(line).text(german).plain().strip();
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
                .complete(
                        null,
                        new CompletionParser().parse(line, line.length(), Parser.ParseContext.COMPLETE),
                        candidates);
        return candidates.stream().map(Candidate::value).toList();
    }

    /** A cell that is busy offers nothing, so it is asked until it has offered this. */
    private static List<String> offersWith(String wanted, String line) {
        List<String> offers = offers(line);
        for (int i = 0; i < PATIENCE && !offers.contains(wanted); i++) {
            offers = offers(line);
        }
        assertTrue(offers.contains(wanted), offers.toString());
        return offers;
    }

    @Test
    void javaAndMusicAreCompletedTogether() {
        says("var chorus = progression(\"F C\")");
        List<String> both = offersWith("chord(", "cho");
        assertTrue(both.containsAll(List.of("chorus", "show")), both.toString());
        List<String> members = offersWith("chorus.chords()", "chorus.");
        assertTrue(members.stream().noneMatch(text -> text.matches(".*(wait|notify|hashCode).*")), members.toString());
        assertTrue(offers("play $").contains("$chorus"), offers("play $").toString());
        offersWith("chorus", "var x = chor");
        assertTrue(offers("show C in E").contains("Eb"), offers("show C in E").toString());
        assertTrue(offers("show C in E").stream().noneMatch(text -> text.contains("(")), "no Java in a sentence");
    }
}
