package monochord.shell;

import static monochord.shell.PromisedJson.json;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the command line promises of questions, lessons and lines that cannot be read: whole lines of JSON. Source:
 * answers and slips spelled by hand, see the tests of the skills.
 */
class PromisesOfAskingTest {
    private static final String BORROWED =
            "\"skill\":\"borrowed-chord\",\"subject\":\"bVI\",\"key\":\"D major\",\"seed\":4,"
                    + "\"prompt\":\"Which chord is ♭VI in D major, the major chord on the lowered sixth?\",\"form\":\"chord\"";

    @Test
    void asksUnderASeed() {
        assertEquals("{\"kind\":\"question\"," + BORROWED + "}", json("ask borrowed-chord of bVI in D --seed 4"));
        assertEquals(json("ask interval in D --seed 12"), json("ask interval in D --seed 12"));
        assertEquals(
                "{\"kind\":\"question\"," + BORROWED.replace(":4,", ":7,") + "}",
                json("ask borrowed-chord of bVI in D"));
    }

    @Test
    void judgesAnAnswer() {
        Run right = Run.of("ask borrowed-chord of bVI in D --seed 4 --json --answer Bb D F");
        assertEquals(
                "{\"kind\":\"verdict\"," + BORROWED + ",\"verdict\":\"right\",\"misconception\":null,"
                        + "\"message\":\"Yes: B♭, which is B♭ D F.\",\"expected\":\"Bb\"}\n",
                right.result(0));
    }

    @ParameterizedTest(name = "ask {0} --answer {1}: {2}, {3}")
    @CsvSource(delimiter = '|', textBlock = """
            borrowed-chord of bVI in D       | Bb         | right      | null             | 0
            borrowed-chord of bVI in D       | Bb D F#    | nearly     | root-only        | 1
            borrowed-chord of bVI in D       | Bm         | wrong      | not-lowered      | 1
            borrowed-chord of bVI in D       | A# D F     | nearly     | spelled-by-sound | 1
            borrowed-chord of bVI in D       | what       | unreadable | null             | 2
            scale-spelling of E harmonic minor | E F# G A B C D | nearly | not-raised       | 1
            triad-spelling of Abm            | A♭, C♭, E♭ | right      | null             | 0
            triad-spelling of Abm            | Ab B Eb    | nearly     | spelled-by-sound | 1
            degree-quality of 3 in Eb        | minor      | right      | null             | 0
            degree-quality of 3 in Eb        | major      | wrong      | quality-of-the-key | 1
            borrowed-source of bVI in D      | B minor    | wrong      | relative-for-parallel | 1
            voicing of Vsus4 in C            | G2 D3 / C4 G4 | right   | null             | 0
            voicing of Vsus4 in C            | G2 D3 / B3 G4 | wrong   | third-kept       | 1
            suspension of Vsus4 in C         | G B C D    | nearly     | third-kept       | 1
            seventh-spelling of Cmaj7        | C E G Bb   | nearly     | wrong-seventh    | 1
            inversion of C/E                 | Em         | wrong      | bass-for-root    | 1
            applied-dominant of V7/V in C    | D7         | right      | null             | 0
            transposition of "F C G" from C to Eb | Ab Eb Bb | right   | null             | 0
            transposition of F C G from C to Eb | D A E    | wrong      | wrong-way        | 1
            next-chord of bVI in C           | Bb         | right      | null             | 0
            next-chord of bVI in C           | C#m        | wrong      | wrong-key        | 1
            """)
    void tellsWhichProcedureWentWrong(String ask, String answer, String verdict, String misconception, int status) {
        Run run = Run.of("ask " + ask + " --json --answer " + answer);
        String id = misconception.equals("null") ? "null" : "\"" + misconception + "\"";
        String fields = "\"verdict\":\"" + verdict + "\",\"misconception\":" + id + ",\"message\":\"";
        assertEquals(List.of(status, true), List.of(run.status(), run.out().contains(fields)), run::out);
        assertEquals("", run.err());
    }

    @Test
    void playsInSilence() {
        assertEquals(
                "{\"kind\":\"play\",\"titles\":[\"G D in D major\"],\"tempo\":84,\"left\":\"Acoustic Grand Piano\","
                        + "\"right\":\"Acoustic Grand Piano\",\"pattern\":\"block\",\"swing\":false,\"times\":1,"
                        + "\"countIn\":false,\"remark\":\"\"}",
                json("play IV I in D at 84"));
        assertEquals("{\"kind\":\"message\",\"message\":\"Silence.\"}", json("stop"));
    }

    @Test
    void listsWhatCanBeAsked() {
        String skills = json("skills");
        assertEquals(
                "{\"kind\":\"skills\",\"skills\":[{\"id\":\"steps\",\"title\":\"Steps of a scale\",\"book\":1,\"subjects\":[\"major\",",
                skills.substring(0, skills.indexOf("\"major\",") + 8));
        assertEquals(27, skills.split("\"id\"").length - 1);
    }

    @Test
    void listsLessonsAndBeginsOne() {
        String lessons = json("lessons");
        assertEquals(
                "{\"kind\":\"lessons\",\"lessons\":[{\"number\":\"1.1\",\"slug\":\"steps-and-half-steps\",\"title\":\"Steps and half steps\","
                        + "\"book\":\"How scales are built\",\"grade\":1,\"done\":false,\"left\":false},",
                lessons.substring(0, lessons.indexOf("},") + 2));
        assertEquals(70, lessons.split("\"number\"").length - 1);
        assertEquals(
                "{\"kind\":\"lesson\",\"number\":\"5.2\",\"slug\":\"the-chord-under-the-sixth\","
                        + "\"title\":\"The chord under the sixth\",\"grade\":5,\"key\":\"A major\"}",
                json("learn 5.2 in A"));
    }

    @Test
    void refusesToAskInAKeyTooFarOut() {
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"\\\"F## minor\\\" is not a key to ask in: steps has no question there. "
                        + "Example: ask steps in C\",\"at\":1}\n",
                Run.of("ask steps in F##m --json").result(2));
    }

    @Test
    void saysWhereALineCannotBeRead() {
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"\\\"Hm\\\" is not a chord: expected a letter from A to G at character 1, found 'H'. "
                        + "Example: Abmaj7\",\"at\":8}\n",
                Run.of("show Abmaj7 Hm --json").result(2));
        assertEquals(
                "{\"kind\":\"error\",\"error\":\"\\\"H\\\" is not a key: expected a letter from A to G at character 1, found 'H'. "
                        + "Example: D major\",\"at\":6}\n",
                Run.of("show C in H --json").result(2));
    }
}
