package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@code fit} and {@code recolour} promise on the command line. What fits is common practice, no source. */
class TunesTest {
    private static final String TUNE = "src/test/resources/monochord/song/musicxml/auld-lang-syne.musicxml";

    @TempDir
    Path folder;

    private static String json(String sentence) {
        return Run.of(sentence, "--json").result(0).stripTrailing();
    }

    private static String note(String pitch, String beat, String beats, String chord, String more) {
        String name = chord == null ? "null" : "\"" + chord + "\"";
        return "{\"pitch\":\"" + pitch + "\",\"beat\":" + beat + ",\"beats\":" + beats + ",\"chord\":" + name + ","
                + more + "}";
    }

    private static String judged(String role, int weight, boolean held, String change) {
        String to = change == null ? "null" : "\"" + change + "\"";
        return "\"role\":\"" + role + "\",\"weight\":" + weight + ",\"held\":" + held + ",\"change\":" + to;
    }

    @Test
    void fitsATuneNoteByNote() {
        assertEquals(
                "{\"kind\":\"fit\",\"key\":\"C major\",\"notes\":["
                        + note("E4", "0", "2", "Ab", judged("clash", 16, false, "Eb4")) + ","
                        + note("D4", "2", "0.5", "G", judged("chord tone", 4, false, null)) + ","
                        + note("C4", "2.5", "0.3333", "G", judged("passing", 1, false, null)) + ","
                        + note("B3", "2.8333", "1.1667", "G", judged("chord tone", 3, false, null)) + ","
                        + note("B3", "4", "0.8333", "C", judged("suspension", 8, true, null)) + ","
                        + note("C4", "4.8333", "1", "C", judged("chord tone", 2, false, null))
                        + "],\"friction\":16,\"weight\":34,\"remarks\":[]}",
                json("fit E4:2 D4:1/2 C4:1/3 B3:2 C4 over bVI V I in C"));
    }

    @Test
    void aPickUpStandsBeforeTheFirstBeat() {
        assertTrue(json("fit G3 | C4:4 over I | in C")
                .contains(note("G3", "-1", "1", null, judged("free", 4, false, null)) + ","
                        + note("C4", "0", "4", "C", judged("chord tone", 32, false, null))));
    }

    @Test
    void fitsALeadSheet() {
        String line = json("fit --file " + TUNE);
        assertTrue(line.startsWith("{\"kind\":\"fit\",\"key\":\"F major\",\"notes\":["), line);
        assertTrue(line.endsWith("\"friction\":0,\"weight\":192,\"remarks\":[\"Auld Lang Syne, in F major.\"]}"), line);
        assertTrue(json("fit --file " + TUNE + " over F | % | bVI | IV | in F").contains("\"change\":\"Ab4\""));
    }

    @Test
    void recoloursBestFirst() {
        String line = json("recolour IV I V vi V I in D");
        assertTrue(
                line.startsWith(
                        "{\"kind\":\"recolour\",\"key\":\"D major\",\"ideas\":[{\"at\":2,\"first\":2,\"last\":3,"
                                + "\"from\":\"V vi\",\"to\":\"Vsus4 bVImaj7\",\"symbol\":\"Asus4 Bbmaj7\","
                                + "\"idiom\":\"borrowed bVI\",\"colour\":\"borrowed\",\"score\":10,"
                                + "\"symbols\":[\"G\",\"D\",\"Asus4\",\"Bbmaj7\",\"A\",\"D\"],\"reasons\":[\""),
                line);
        assertTrue(
                line.contains("\"default\":0,\"best\":[\"G\",\"D\",\"Asus4\",\"Bbmaj7\",\"A\",\"D\"],"
                        + "\"bestNumerals\":[\"IV\",\"I\",\"Vsus4\",\"bVImaj7\",\"V\",\"I\"]"),
                line);
        assertTrue(json("recolour C in C").contains("\"default\":null"));
    }

    @Test
    void recoloursWithAnIdiomByName() {
        assertEquals(
                "{\"kind\":\"recolour\",\"key\":\"C major\",\"idiom\":\"borrowed iv\",\"first\":1,\"last\":1,"
                        + "\"symbols\":[\"C\",\"Fm\",\"G\",\"C\"],\"numerals\":[\"I\",\"iv\",\"V\",\"I\"],"
                        + "\"reasons\":[\"Fm prepares G as before, now with the lowered sixth, A♭, that leans on G.\"],"
                        + "\"source\":\"Taught in Open Music Theory (2014), alteredSubdominants.\"}",
                json("recolour C F G C in C with borrowed iv at 2"));
        assertEquals(1, Run.of("recolour C F G C in C with tritone at 2").status());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            recolour C F G C in C at 2                  | 2 | "C F G C in C at 2" is not a sentence: at says where an idiom goes that is named behind with.
            recolour C F G C in C more now              | 2 | "C F G C in C more now" is not a sentence: more stands alone.
            recolour C F G C in C with applied at 9     | 2 | "9" is not a place in the row: the chords are counted from 1 to 4.
            recolour C F G C in C with borrowed X at 2  | 2 | "X" is not a numeral: expected I to VII or i to vii at character 1, found 'X'.
            recolour C F G C in C with tritone at 2     | 1 | That does not fit at chord 2. A tritone substitute stands for a dominant: it needs a major chord whose root falls a fifth to the next. It would fit elsewhere: chord 3. What would fit: borrowed ♭VI, chord 2; applied, after chord 1; borrowed iiø7, chord 2.
            recolour C F in C with stepping bass        | 1 | A bass by step needs a chord between two whose roots lie a third apart. There is no such place in these chords. What would fit: borrowed iv, after chord 2; applied, after chord 1; backdoor dominant, after chord 2.
            recolour C Dm in C with double plagal       | 1 | A double plagal way needs the chord on 4, and the tonic chord behind it. There is no such place in these chords. What would fit: applied, after chord 1; borrowed iv, chord 2; passing diminished, after chord 1.
            recolour C F G C in C with borrowed IV at 2 | 1 | That does not fit at chord 2. That chord stands there already. What would fit: borrowed ♭VI, chord 2; applied, after chord 1; borrowed iiø7, chord 2.
            recolour C in C with tritone                | 1 | A tritone substitute stands for a dominant: it needs a major chord whose root falls a fifth to the next. There is no such place in these chords.
            recolour C in C with applied                | 1 | An applied dominant needs a major or minor chord behind another, to lead to. There is no such place in these chords.
            recolour C in C with two-five               | 1 | A two and a five need a major or minor chord behind another, to lead to. There is no such place in these chords.
            recolour C in C with walk up                | 1 | A walk up by whole steps needs two chords that lead home to the tonic. There is no such place in these chords.
            recolour C in C with flat nine              | 1 | A lowered ninth needs the dominant, and the tonic chord behind it. There is no such place in these chords.
            recolour C in C with passing diminished     | 1 | A passing diminished chord needs two chords whose roots lie a whole step apart. There is no such place in these chords.
            recolour Bdim in C with common-tone diminished | 1 | A common-tone diminished chord needs a major chord to turn about. There is no such place in these chords.
            recolour Bdim in C with line cliche         | 1 | A line of half steps needs a major or minor chord that stands. There is no such place in these chords.
            recolour Dm in C with rising line           | 1 | A rising line needs the tonic chord for a whole bar, and the chord on 4 behind it. There is no such place in these chords.
            recolour Bdim in C with suspended           | 1 | A suspension needs a chord with a third, for the fourth to fall to. There is no such place in these chords.
            recolour Bdim in C with added tone          | 1 | An added tone needs a chord of the key that does not have it yet, where it can be held. There is no such place in these chords.
            recolour C in C with chromatic descent      | 1 | A chromatic bass needs chords whose roots come down by step from the tonic. There is no such place in these chords.
            recolour C in C with mediant                | 1 | A mediant needs the tonic chord before it, and a chord a third away or none. There is no such place in these chords.
            """)
    void whatCannotBeDoneIsSaid(String sentence, int status, String first) {
        Run run = Run.of(sentence);
        assertEquals(status, run.status());
        String said = (run.out() + run.err())
                .replace("\n", " ")
                .replaceAll("(?<=\\.) (Example|Form).*", "")
                .strip();
        assertEquals(first, said);
    }

    @Test
    void recolouringSaysWhatItDoesToTheTune() {
        String line = json("recolour IV I V vi V I in C under r:6 E4:2 r:4");
        assertTrue(line.contains("\"changes\":[{\"at\":0,\"beat\":6,\"from\":\"E4\",\"to\":\"Eb4\"}]"), line);
        assertTrue(!line.contains("\"default\":0,\"best\":[\"F\",\"C\",\"Gsus4\",\"Abmaj7\""), line);
    }

    @Test
    void theTuneStandsUnderTheChordsBarByBar() {
        String text = Run.of("recolour C | G | Am | F | in C under G4:4 | D5:4 | C5:2 A4:2 | C5:4")
                .result(0);
        assertTrue(text.contains("""
                bar  chord     tune
                1    C         G4:4
                2    G         D5:4
                3    Am        C5:2 A4:2
                4    F         C5:2
                     Fm        .C5:2
                """), text);
    }

    @Test
    void recoloursALeadSheetEndToEnd() {
        String text = Run.of("recolour --file " + TUNE).result(0);
        assertTrue(text.contains("before"), text);
        assertTrue(text.contains("band first."), text);
    }

    @Test
    void playsTheRecolouredVersionAfterwards() {
        Run run =
                new Run.Outside().typing("recolour IV I V vi V I in C\nplay\n").run();
        assertTrue(run.out().contains("Playing F C Gsus4 A♭maj7 G C in C major at 84."), run::out);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fit E4:2 D4 C4 over F G Am in C",
                "fit E4:2 D4:1/32 C4:4 over Abmaj7(#11)/C G Am in Cb",
                "recolour IV I V vi V I in Gb",
                "recolour I vi IV V | I vi | IV V | I | in Db more",
                "recolour I vi ii V in Db bold",
                "recolour I vi ii V in Db with two-five at 2",
                "recolour Cm7b5 F7#9 Bbmaj9 N6 in Cb under E4:2 A4 B4"
            })
    void staysWithinEightyColumns(String sentence) {
        for (String manner : List.of("--plain", "--ascii", "--json")) {
            List<String> lines = Run.of(sentence, manner).result(0).lines().toList();
            assertTrue(!lines.isEmpty());
            lines.stream()
                    .filter(line -> !manner.equals("--json"))
                    .forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80, line));
            lines.stream()
                    .filter(line -> manner.equals("--ascii"))
                    .forEach(line -> assertTrue(line.chars().allMatch(c -> c < 128), line));
        }
    }

    @Test
    void badFilesAndSentencesGetOneClearLine() throws IOException {
        Files.writeString(folder.resolve("broken.xml"), "<score-partwise>\n<part>");
        Run broken = new Run.Outside().inFolder(folder).run("fit", "--file", "broken.xml");
        assertEquals(3, broken.status());
        assertEquals(1, (broken.out() + broken.err()).lines().count());
        assertTrue((broken.out() + broken.err()).startsWith("broken.xml: it is not well-formed XML at line 2"));
        assertEquals(
                3,
                new Run.Outside()
                        .inFolder(folder)
                        .run("recolour", "--file", "no.xml")
                        .status());
        assertEquals(2, Run.of("fit E4 over").status());
        assertEquals(2, Run.of("fit E4").status());
        assertEquals(2, Run.of("fit over C").status());
        assertEquals(2, Run.of("recolour").status());
        assertEquals(2, Run.of("recolour C under H").status());
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"\\\"H\\\" is not a note name: expected a letter from A to G at character 1, found 'H'. "
                        + "Example: Eb\",\"at\":12}",
                Run.of("recolour C under C4 H --json").out().strip());
    }
}
