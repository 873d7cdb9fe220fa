package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two versions beside each other: what is heard, what is said to differ, how often. Source: differences read off the
 * two rows of notes by hand.
 */
class ComparingTest {
    @TempDir
    Path folder;

    private Hall hall;

    @BeforeEach
    void opens() {
        hall = new Hall(folder);
    }

    @Test
    void comparesTwoVersionsAndSaysWhatDiffers() {
        Run run = hall.typed(
                "compare F C G Ab vs F C Gsus4 Abmaj7 in C", "compare", "compare first", "compare b", "play");
        String first = """
                First F C G A♭ in C major: 22 half steps moved, 2 notes held, 2 parallel fifths
                or octaves.
                Then F C Gsus4 A♭maj7 in C major: 19 half steps moved, 5 notes held, 1 parallel
                fifth or octave.
                Changed: chord 3, Gsus4 for G; chord 4, A♭maj7 for A♭.
                Agree a changed chord with the band first.
                compare hears both again, compare first or compare second one of them.
                """;
        assertEquals(
                first + first + "Playing F C G A♭ in C major at 84.\n"
                        + "Playing F C Gsus4 A♭maj7 in C major at 84.\n"
                        + "Playing F C G A♭ in C major,\nthen F C Gsus4 A♭maj7 in C major at 84.\n",
                run.out());
        List<Long> lengths = hall.ear().performances().stream()
                .map(one -> one.score().beats().numerator())
                .toList();
        assertEquals(List.of(18L, 18L, 8L, 8L, 18L), lengths, "two beats of breath between eight and eight");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            compare C vs Cm                  | Changed: chord 1, Cm for C.
            compare C major vs C dorian      | Changed: note 3, E♭4 for E4; note 7, B♭4 for B4.
            compare C4 D4 E4 versus C4 D4 Eb4 G4 | Only in the second: E♭ G.
            compare F C vs F C G/B Am        | Only in the second: G/B, Am.
            compare F C vs F C               | Both are the same, key for key.
            compare C D F# vs C D Gb         | Changed: chord 3
            compare C4 E4 G4 vs C4 E4 A4     | A. Changed: note 3, A4 for G4. compare
            compare E4:2 D4 vs E4:2 Eb4 over C G in C | In the tune: note 2, E♭4 for D4.
            compare E4:2 D4 vs E4:2 D4:2     | The same keys, held for other lengths.
            compare F C G vs F | C | G       | The same keys, held for other lengths.
            """)
    void tellsTheDifference(String line, String said) {
        String out = hall.typed(line).out().replaceAll("\\s+", " ");
        assertTrue(out.contains(said), out);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            voice F in C spread      | Other keys for chord 1: F3 F4 A4 C5, then F2 C3 A3 F4.
            voice F in C shell       | Other keys for chord 1: F3 F4 A4 C5, then F2 C4 A4.
            voice C in C close       | Both are the same, key for key.
            """)
    void twoWaysToHoldOneChordAreTheSameOnlyKeyForKey(String line, String said) {
        String out = hall.typed(line, "compare this").out().replaceAll("\\s+", " ");
        assertTrue(out.contains(said), out);
    }

    @Test
    void thisMayBeComparedAsOftenAsOneLikes() {
        Run run =
                hall.typed("voice F C G in C", "compare this", "compare this", "compare F vs Fm", "compare this at 60");
        String out = run.out().replaceAll("\\s+", " ");
        assertEquals("", run.err());
        assertEquals(2, out.split("Then F C G in C major voiced close").length - 1, out);
        assertEquals(2, out.split("Changed: chord 1, Fm for F").length - 1, out);
        assertEquals(60, hall.ear().last().tempo());
    }

    @Test
    void comparesWhatWasVoicedRecolouredOrRepaired() {
        Run run = hall.typed(
                "voice F C G in C spread",
                "play",
                "compare this",
                "recolour IV I V vi V I in C",
                "compare this",
                "fit F4:4 E4 over C C in C",
                "compare this");
        String out = run.out().replaceAll("\\s+", " ");
        assertTrue(out.contains("First F C G in C major in root position:"), out);
        assertTrue(out.contains("Then F C G in C major voiced spread:"), out);
        assertTrue(out.contains("First F C G Am G C in C major: 40 half steps moved"), out);
        assertTrue(out.contains("In the tune: note 1, E4 for F4."), out);
    }

    @Test
    void promisesTheseFields() {
        assertEquals(
                "{\"kind\":\"compare\",\"key\":\"C major\",\"tempo\":84,"
                        + "\"first\":{\"symbols\":[\"C\",\"F\"],\"voicings\":[{\"keys\":[\"C3\",\"C4\",\"E4\",\"G4\"]},"
                        + "{\"keys\":[\"F2\",\"C4\",\"F4\",\"A4\"]}],\"line\":[],\"moved\":10,\"held\":1,\"parallels\":0},"
                        + "\"second\":{\"symbols\":[\"C\",\"Fm\"],\"voicings\":[{\"keys\":[\"C3\",\"C4\",\"E4\",\"G4\"]},"
                        + "{\"keys\":[\"F2\",\"C4\",\"F4\",\"Ab4\"]}],\"line\":[],\"moved\":9,\"held\":1,\"parallels\":0},"
                        + "\"changed\":[{\"at\":1,\"from\":\"F\",\"to\":\"Fm\"}],"
                        + "\"differences\":[\"Changed: chord 2, Fm for F.\",\"On top G4 A4, then G4 Ab4.\"],\"remark\":\"\"}\n",
                hall.once("compare C F vs C Fm in C --json").out());
    }
}
