package monochord.shell;

import static monochord.shell.PromisedJson.NONE;
import static monochord.shell.PromisedJson.chords;
import static monochord.shell.PromisedJson.json;
import static monochord.shell.PromisedJson.notes;
import static monochord.shell.PromisedJson.row;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the command line promises of transposing, voicing and the motion of voices: whole lines of JSON. */
class PromisesForHandsTest {
    @Test
    void findsTheFretThatRingsOpen() {
        String line = json("transpose Bb Gm in Bb capo");
        assertEquals(
                "{\"kind\":\"capo\",\"from\":\"Bb major\",\"key\":\"G major\","
                        + chords(row("I 1 G", "G B D", NONE, "G major"), row("vi 6- Em", "E G B", NONE, "G major"))
                        + ",\"frets\":[{\"fret\":3,\"shapes\":\"G major\",\"chords\":[\"G\",\"Em\"],"
                        + "\"reason\":\"every chord rings open; low, so most of the neck stays\"}",
                line.substring(0, line.indexOf("stays\"}") + 7));
        assertEquals(5, line.split("\"fret\":").length - 1);
    }

    @Test
    void asksToTransposeFromOneKeyToAnother() {
        String asked = json("ask transposition of \"F C G\" from C to Eb --seed 3");
        assertEquals(
                "{\"kind\":\"question\",\"skill\":\"transposition\",\"subject\":\"F C G to Eb major\",\"key\":\"C major\",\"seed\":3,"
                        + "\"prompt\":\"These chords are in C major: F C G. Play them in E♭ major.\","
                        + "\"form\":\"progression\"}",
                asked);
        assertEquals(asked, json("ask transposition of F C G from C to Eb --seed 3"));
        assertEquals(asked, json("ask transposition of F C G to Eb in C --seed 3"));
    }

    @Test
    void transposesToAKeyForAnInstrumentAndForACapo() {
        assertEquals(
                "{\"kind\":\"transpose\",\"from\":\"C major\",\"key\":\"Eb major\","
                        + chords(
                                row("IV 4 Ab", "Ab C Eb", NONE, "Eb major"),
                                row(
                                        "bVI b6 Cb",
                                        "Cb Eb Gb",
                                        "Eb minor, Eb phrygian, Eb locrian, Eb harmonic minor",
                                        "Eb major"))
                        + "}",
                json("transpose F Ab from C to Eb"));
        assertEquals(
                "{\"kind\":\"transpose\",\"from\":\"C major\",\"key\":\"A major\","
                        + chords(row("IV 4 D", "D F# A", NONE, "A major")) + "}",
                json("transpose F in C for alto sax"));
        assertEquals(
                "{\"kind\":\"transpose\",\"from\":\"Bb major\",\"key\":\"G major\","
                        + chords(row("vi 6- Em", "E G B", NONE, "G major")) + "}",
                json("transpose Gm in Bb capo 3"));
    }

    /** Held, up or down by hand: C stays, F and A step down, the bass falls a fourth: 0 + 1 + 2 + 5 half steps. */
    @Test
    void voicesAProgressionForTwoHands() {
        String whole = json("voice F C in C");
        assertEquals(
                "{\"kind\":\"voice\",\"key\":\"C major\",\"style\":\"close\",\"reach\":8,\"voicings\":["
                        + "{\"symbol\":\"F\",\"left\":[\"F2\"],\"right\":[\"C4\",\"F4\",\"A4\"]},"
                        + "{\"symbol\":\"C\",\"left\":[\"C3\"],\"right\":[\"C4\",\"E4\",\"G4\"]}],"
                        + "\"cost\":8,\"moved\":10,\"parallels\":0,\"held\":1,\"next\":[{",
                whole.substring(0, whole.indexOf("\"next\":[") + 9));
        assertEquals(
                "\"plain\":{\"voicings\":["
                        + "{\"symbol\":\"F\",\"left\":[\"F3\"],\"right\":[\"F4\",\"A4\",\"C5\"]},"
                        + "{\"symbol\":\"C\",\"left\":[\"C3\"],\"right\":[\"C4\",\"E4\",\"G4\"]}],"
                        + "\"cost\":72,\"moved\":20,\"parallels\":3,\"held\":0}}",
                whole.substring(whole.indexOf("\"plain\"")));
    }

    private static String pair(int lower, int upper, String motion, String parallel, String repeated) {
        return "{\"lower\":" + lower + ",\"upper\":" + upper + ",\"motion\":\"" + motion + "\",\"parallel\":" + parallel
                + ",\"contrary\":null,\"repeated\":" + repeated + "}";
    }

    /** Two chords of C major that share two notes, and a pair of fifths; read by hand. */
    @Test
    void watchesVoicesMove() {
        assertEquals(
                "{\"kind\":\"motion\",\"strictness\":\"band\",\"chords\":[],\"voices\":[\"C3 G3 E4 C5\",\"A2 A3 E4 C5\"],\"steps\":[{\"pairs\":["
                        + String.join(
                                ",",
                                pair(0, 1, "contrary", "null", "null"),
                                pair(0, 2, "oblique", "null", "null"),
                                pair(0, 3, "oblique", "null", "null"),
                                pair(1, 2, "oblique", "null", "null"),
                                pair(1, 3, "oblique", "null", "null"),
                                pair(2, 3, "still", "null", "null"))
                        + "],\"common\":" + notes("E4 C5") + ",\"shared\":" + notes("C E")
                        + ",\"byVoice\":[-3,2,0,0],\"moved\":5}],\"faults\":[],\"remarks\":[]}",
                json("motion C3 G3 E4 C5 | A2 A3 E4 C5"));
        String strict = json("motion C3 G3 | D3 A3 | D3 A3 chorale");
        assertEquals(
                "{\"kind\":\"motion\",\"strictness\":\"chorale\",\"chords\":[],\"voices\":[\"C3 G3\",\"D3 A3\",\"D3 A3\"],\"steps\":[{\"pairs\":["
                        + pair(0, 1, "parallel", "5", "null")
                        + "],\"common\":[],\"shared\":[],\"byVoice\":[2,2],\"moved\":4},{\"pairs\":["
                        + pair(0, 1, "still", "null", "5") + "],\"common\":" + notes("D3 A3") + ",\"shared\":"
                        + notes("D A") + ",\"byVoice\":[0,0],\"moved\":0}],"
                        + "\"faults\":[{\"kind\":\"parallel-fifths\",\"at\":1,\"voices\":[0,1],\"message\":"
                        + "\"Parallel fifths between lower voice and upper voice: C3 G3 to D3 A3.\",\"instead\":"
                        + "\"The bass goes up: take the others down to their nearest notes.\"}],\"remarks\":[]}",
                strict);
    }

    @Test
    void voicesAProgressionToWatchIt() {
        String voiced = json("motion V bVI in C");
        assertEquals(
                "{\"kind\":\"motion\",\"strictness\":\"band\",\"chords\":[\"G\",\"Ab\"],\"voices\":[\"G2 B3 D4 G4\",\"Ab2 C4 Eb4 Ab4\"],",
                voiced.substring(0, voiced.indexOf("\"steps\"")));
    }

    @ParameterizedTest(name = "motion {0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 E3 | H4 F4            ! 9  ! \\"H4\\" is not a pitch: expected a letter from A to G at character 1, found 'H'. Example: Ab3
            C3 E3                    ! 6  ! \\"C3 E3\\" is not a row of voiced chords: a bar line stands between two chords or more. Example: C3 G3 E4 C5 | A2 A3 E4 C5
            F                        ! 2  ! \\"F\\" is not something to watch: it takes two chords to move. Example: motion C3 G3 E4 C5 | A2 A3 E4 C5
            F C band chorale         ! 1  ! \\"F C band chorale\\" is not something to watch: say chorale or band, not both. Example: motion C3 G3 E4 C5 | A2 A3 E4 C5
            chorale F C              ! 9  ! \\"F C\\" is not something to watch: the chords come first, then chorale or band. Example: motion C3 G3 E4 C5 | A2 A3 E4 C5 chorale
            """)
    void saysWhatCannotBeWatched(String text, int at, String message) {
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"" + message + "\",\"at\":" + at + "}\n",
                Run.of("motion " + text + " --json").result(2));
    }
}
