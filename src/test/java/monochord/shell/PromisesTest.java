package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the command line promises to scripts, row by row, whole lines of JSON.
 *
 * <p>The chords are spelled by hand: triads and sevenths in thirds on the scale named, the scales by their steps
 * (Integrated Music Theory, lessons 4, 8 and 16a; Open Music Theory, "scales"). Which modes hold a borrowed chord was
 * found by writing the modes out.
 */
class PromisesTest {
    private static final String NONE = "";

    private static String json(String sentence) {
        return Run.of(sentence, "--json").result(0).stripTrailing();
    }

    private static String list(String words, String between) {
        return words.isEmpty()
                ? "[]"
                : Arrays.stream(words.split(between)).collect(Collectors.joining("\",\"", "[\"", "\"]"));
    }

    private static String notes(String notes) {
        return list(notes, " ");
    }

    /** A row, its names as they are said: numeral, number, symbol. */
    private static String row(String names, String tones, String borrowedFrom, String key) {
        String[] name = names.split(" ");
        String root = tones.split(" ")[0];
        return rowOn(root, name, tones, borrowedFrom, key);
    }

    private static String rowOn(String bass, String[] name, String tones, String borrowedFrom, String key) {
        String root = tones.split(" ")[0];
        return "{\"numeral\":\"" + name[0] + "\",\"number\":\"" + name[1] + "\",\"symbol\":\"" + name[2]
                + "\",\"root\":\"" + root + "\",\"bass\":\"" + bass + "\",\"tones\":" + notes(tones)
                + ",\"borrowedFrom\":" + list(borrowedFrom, ", ") + ",\"key\":\"" + key + "\"}";
    }

    /** What a borrowed chord has besides: degrees changed; chords before and behind it; degrees of the tune. */
    private static String changed(String row, String degrees, String approach, String exit, String tune) {
        String[] welcomesAndFights = tune.split(" but ");
        return row.substring(0, row.length() - 1) + ",\"changed\":" + notes(degrees) + ",\"approach\":"
                + notes(approach) + ",\"exit\":" + notes(exit) + ",\"welcomes\":" + notes(welcomesAndFights[0])
                + ",\"fights\":" + notes(welcomesAndFights[1]) + "}";
    }

    private static String chords(String... rows) {
        return Stream.of(rows).collect(Collectors.joining(",", "\"chords\":[", "]"));
    }

    @ParameterizedTest(name = "show {0}")
    @CsvSource(delimiter = '|', textBlock = """
            Abmaj7       | Abmaj7 | Ab | Ab | Ab C Eb G       | P1 M3 P5 M7
            F/A          | F/A    | F  | A  | F A C           | P1 M3 P5
            Bø           | Bm7b5  | B  | B  | B D F A         | P1 m3 d5 m7
            Ebsus4       | Ebsus4 | Eb | Eb | Eb Ab Bb        | P1 P4 P5
            G#dim7       | G#dim7 | G# | G# | G# B D F        | P1 m3 d5 d7
            C6/9         | C6/9   | C  | C  | C E G A D       | P1 M3 P5 M6 M9
            bVI in Gb    | Ebb    | Ebb | Ebb | Ebb Gb Bbb    | P1 M3 P5
            viio7 in G#m | F##dim7 | F## | F## | F## A# C# E  | P1 m3 d5 d7
            4 in A minor | Dm     | D  | D  | D F A           | P1 m3 P5
            """)
    void showsAChord(String text, String symbol, String root, String bass, String tones, String intervals) {
        assertEquals(
                "{\"kind\":\"chord\",\"symbol\":\"" + symbol + "\",\"root\":\"" + root + "\",\"bass\":\"" + bass
                        + "\",\"tones\":" + notes(tones) + ",\"intervals\":" + notes(intervals) + "}",
                json("show " + text));
    }

    @ParameterizedTest(name = "show {0}")
    @CsvSource(delimiter = '|', textBlock = """
            E harmonic minor      | E harmonic minor | E F# G A B C D#       | 1
            Gb major              | Gb major         | Gb Ab Bb Cb Db Eb F   | -6
            D dorian              | D dorian         | D E F G A B C         | 0
            Bb mixolydian         | Bb mixolydian    | Bb C D Eb F G Ab      | -3
            G# minor              | G# minor         | G# A# B C# D# E F#    | 5
            minor in C            | C minor          | C D Eb F G Ab Bb      | -3
            C whole-tone          | C whole-tone     | C D E F# G# A#        | null
            """)
    void showsAScale(String text, String name, String tones, String signature) {
        assertEquals(
                "{\"kind\":\"scale\",\"name\":\"" + name + "\",\"tones\":" + notes(tones) + ",\"signature\":"
                        + signature + "}",
                json("show " + text));
    }

    @Test
    void showsAProgressionAsRows() {
        String expected = "{\"kind\":\"progression\",\"key\":\"D major\","
                + chords(
                        row("IV 4 G", "G B D", NONE, "D major"),
                        row("bVI b6 Bb", "Bb D F", "D minor, D phrygian, D locrian, D harmonic minor", "D major"),
                        row("I 1 D", "D F# A", NONE, "D major"))
                + "}";
        assertEquals(expected, json("show IV bVI I in D"));
        assertEquals(expected, json("show 4 b6 1 in D"));
        assertEquals(expected, json("show G Bb D in D"));
        assertEquals(expected, json("G Bb D in D"));
    }

    @Test
    void showsNotes() {
        assertEquals(
                "{\"kind\":\"notes\",\"pitches\":[\"C4\",\"E4\",\"G4\"],\"notes\":[\"C\",\"E\",\"G\"],"
                        + "\"names\":[{\"symbol\":\"C\",\"bySound\":false}]}",
                json("show C4 E4 G4"));
    }

    @Test
    void namesAChordInAKeyThreeWays() {
        assertEquals(
                row("bVI b6 Ab", "Ab C Eb", "C minor, C phrygian, C locrian, C harmonic minor", "C major"),
                json("numeral bVI in C"));
        assertEquals(row("V7/V 27 F7", "F A C Eb", "Eb lydian", "Eb major"), json("numeral V7/V in Eb"));
        assertEquals(
                row("iiø7 2-7b5 Dm7b5", "D F Ab C", "C minor, C harmonic minor", "C major"),
                json("numeral Dm7b5 in C"));
        assertEquals(row("VII 7 G", "G B D", NONE, "A minor"), json("numeral VII in Am"));
        assertEquals(row("IV 4 Ab", "Ab C Eb", NONE, "Eb major"), json("numeral 4 in Eb"));
        assertEquals(rowOn("E", "I6 1/3 C/E".split(" "), "C E G", NONE, "C major"), json("numeral C/E in C"));
    }

    @Test
    void namesNotesBestFirst() {
        assertEquals(
                "{\"notes\":[\"C\",\"E\",\"G\",\"A\"],\"names\":[{\"symbol\":\"C6\",\"bySound\":false},"
                        + "{\"symbol\":\"Am7/C\",\"bySound\":false}]}",
                json("name C E G A"));
        assertEquals(
                "{\"notes\":[\"A\",\"C\",\"E\",\"G\"],\"names\":[{\"symbol\":\"Am7\",\"bySound\":false},"
                        + "{\"symbol\":\"C6/A\",\"bySound\":false}]}",
                json("name A-C-E-G in C"));
    }

    @Test
    void listsWhatAKeyBorrowsFromAMode() {
        String key = "A major";
        String mixolydian = "A mixolydian";
        String three = "A mixolydian, A dorian, A minor";
        assertEquals(
                "{\"key\":\"A major\","
                        + chords(
                                changed(
                                        row("iiio 3o C#dim", "C# E G", mixolydian, key),
                                        "b7",
                                        "iii I bIII",
                                        "vi iii I",
                                        "3 5 1 2 6 but 4 7"),
                                changed(
                                        row("v 5- Em", "E G B", three, key),
                                        "b7",
                                        "I V ii",
                                        "I IV bVII",
                                        "2 5 1 3 4 6 but 7"),
                                changed(
                                        row("bVII b7 G", "G B D", three, key),
                                        "b7",
                                        "I IV ii",
                                        "IV I V",
                                        "2 4 1 3 5 6 but 7"),
                                changed(
                                        row("I7 17 A7", "A C# E G", mixolydian, key),
                                        "b7",
                                        "V IV vi",
                                        "IV V vi",
                                        "1 3 5 2 6 but 7"),
                                changed(
                                        row("iiiø7 3-7b5 C#m7b5", "C# E G B", mixolydian, key),
                                        "b7",
                                        "iii I V",
                                        "vi iii I",
                                        "2 3 5 1 6 but 4 7"),
                                changed(
                                        row("v7 5-7 Em7", "E G B D", three, key),
                                        "b7",
                                        "I ii V",
                                        "I IV bVII",
                                        "2 4 5 1 3 6 but 7"),
                                changed(
                                        row("bVIImaj7 b7maj7 Gmaj7", "G B D F#", "A mixolydian, A dorian", key),
                                        "b7",
                                        "I IV ii",
                                        "IV I V",
                                        "2 4 6 1 3 5 but 7"))
                        + "}",
                json("borrow mixolydian in A"));
    }

    /** Around ♭VI: V and I before it, the walk up and the dominant behind (Integrated Music Theory, lesson 16a). */
    @Test
    void tellsOneBorrowedChordWhole() {
        assertEquals(
                "{\"key\":\"D major\","
                        + chords(changed(
                                row(
                                        "bVI b6 Bb",
                                        "Bb D F",
                                        "D minor, D phrygian, D locrian, D harmonic minor",
                                        "D major"),
                                "b3 b6",
                                "V I vi",
                                "bVII V7sus4 V",
                                "1 2 4 5 but 3 6 7"))
                        + "}",
                json("borrow bVI in D"));
        assertEquals(json("borrow bVI in D"), json("borrow Bb in D"));
        assertEquals(
                "{\"error\":\"\\\"vi\\\" is not a borrowed chord: it is the key's own chord in C major. "
                        + "Example: borrow bVI in D\",\"at\":1}\n",
                Run.of("borrow vi in C --json").result(2));
    }

    /**
     * Counts: McGill Billboard annotations 2.0 (Burgoyne, Wild, Fujinaga, ISMIR 2011; CC0), RS200 (de Clercq, Temperley,
     * 2011 and 2013; CC BY 4.0) and When in Rome (Gotham and others; CC BY-SA 4.0), read off the tables by hand.
     */
    @ParameterizedTest(name = "after {0}: {1} {2} of {3} in {4} songs")
    @CsvSource(delimiter = '|', textBlock = """
            bVI in C    | bVII | 143  | 531   | 23  | McGill Billboard
            bVI in Eb   | V    | 105  | 531   | 22  | McGill Billboard
            bVII in A   | IV   | 810  | 2160  | 91  | McGill Billboard
            iv in C     | I    | 274  | 481   | 51  | McGill Billboard
            IV in C     | I    | 5390 | 10819 | 415 | McGill Billboard
            VI in A minor | i  | 448  | 843   | 13  | RS200
            VI in A minor | V  | 115  | 843   | 6   | RS200
            """)
    void saysWhatComesNextAndInHowManySongs(
            String sentence, String numeral, int count, int of, int songs, String corpus) {
        String line = json("after " + sentence);
        String next = Arrays.stream(line.split("(?=\\{\"numeral\")"))
                .filter(object -> object.startsWith("{\"numeral\":\"" + numeral + "\",\"symbol\""))
                .findFirst()
                .orElseThrow(() -> new AssertionError(line));
        String counts = ",\"count\":" + count + ",\"of\":" + of + ",\"songs\":" + songs + "}";
        assertEquals(
                List.of(true, true), List.of(next.contains(counts), next.contains("\"corpus\":\"" + corpus)), next);
    }

    @Test
    void tellsAWayWithItsReason() {
        String line = json("after Ab in C");
        assertEquals(
                "{\"key\":\"C major\",\"numeral\":\"bVI\",\"symbol\":\"Ab\",\"next\":["
                        + "{\"numeral\":\"bVII\",\"symbol\":\"Bb\",\"reason\":\"It stays borrowed: the walk up ♭VI ♭VII I. "
                        + "S to S, the root rises a whole step, nothing stays, 6 half steps.\",\"held\":[],\"moved\":6,"
                        + "\"corpus\":\"McGill Billboard, J. A. Burgoyne, J. Wild and I. Fujinaga, 2011\","
                        + "\"count\":143,\"of\":531,\"songs\":23},",
                line.substring(0, line.indexOf("},") + 2));
        assertEquals(
                "\"classical\":[{\"numeral\":\"V\",\"corpus\":\"When in Rome\",\"count\":14,\"of\":178},",
                line.substring(line.indexOf("\"classical\""), line.indexOf("},", line.indexOf("\"classical\"")) + 2));
        assertEquals(line, json("after bVI in C"));
        assertEquals(6, line.split("\"reason\"").length - 1);
        assertEquals(
                "{\"error\":\"\\\"bVI V\\\" is not a chord: one chord is asked for, and several stand here. "
                        + "Example: after bVI in D\",\"at\":1}\n",
                Run.of("after bVI V in C --json").result(2));
    }

    @Test
    void findsTheFretThatRingsOpen() {
        String line = json("transpose Bb Gm in Bb capo");
        assertEquals(
                "{\"from\":\"Bb major\",\"key\":\"G major\","
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
                "{\"skill\":\"transposition\",\"subject\":\"F C G to Eb major\",\"key\":\"C major\",\"seed\":3,"
                        + "\"prompt\":\"These chords are in C major: F C G. Play them in E♭ major.\","
                        + "\"form\":\"progression\"}",
                asked);
        assertEquals(asked, json("ask transposition of F C G from C to Eb --seed 3"));
        assertEquals(asked, json("ask transposition of F C G to Eb in C --seed 3"));
    }

    @Test
    void transposesToAKeyForAnInstrumentAndForACapo() {
        assertEquals(
                "{\"from\":\"C major\",\"key\":\"Eb major\","
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
                "{\"from\":\"C major\",\"key\":\"A major\"," + chords(row("IV 4 D", "D F# A", NONE, "A major")) + "}",
                json("transpose F in C for alto sax"));
        assertEquals(
                "{\"from\":\"Bb major\",\"key\":\"G major\"," + chords(row("vi 6- Em", "E G B", NONE, "G major")) + "}",
                json("transpose Gm in Bb capo 3"));
    }

    /** Held, up or down by hand: C stays, F and A step down, the bass falls a fourth: 0 + 1 + 2 + 5 half steps. */
    @Test
    void voicesAProgressionForTwoHands() {
        String whole = json("voice F C in C");
        assertEquals(
                "{\"key\":\"C major\",\"style\":\"close\",\"reach\":8,\"voicings\":["
                        + "{\"symbol\":\"F\",\"left\":[\"F2\"],\"right\":[\"C4\",\"F4\",\"A4\"]},"
                        + "{\"symbol\":\"C\",\"left\":[\"C2\"],\"right\":[\"C4\",\"E4\",\"G4\"]}],"
                        + "\"cost\":8,\"moved\":8,\"parallels\":0,\"held\":1,\"next\":[{",
                whole.substring(0, whole.indexOf("\"next\":[") + 9));
        assertEquals(
                "\"plain\":{\"voicings\":["
                        + "{\"symbol\":\"F\",\"left\":[\"F3\"],\"right\":[\"F4\",\"A4\",\"C5\"]},"
                        + "{\"symbol\":\"C\",\"left\":[\"C3\"],\"right\":[\"C4\",\"E4\",\"G4\"]}],"
                        + "\"cost\":64,\"moved\":20,\"parallels\":3,\"held\":0}}",
                whole.substring(whole.indexOf("\"plain\"")));
    }

    private static String pair(int lower, int upper, String motion, String parallel, String repeated) {
        return "{\"lower\":" + lower + ",\"upper\":" + upper + ",\"motion\":\"" + motion + "\",\"parallel\":" + parallel
                + ",\"contrary\":null,\"repeated\":" + repeated + "}";
    }

    /** Chords from Integrated Music Theory, lesson 11b, example 8, and lesson 10b, example 2; read by hand. */
    @Test
    void watchesVoicesMove() {
        assertEquals(
                "{\"strictness\":\"band\",\"chords\":[],\"voices\":[\"C3 G3 E4 C5\",\"A2 A3 E4 C5\"],\"steps\":[{\"pairs\":["
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
                "{\"strictness\":\"chorale\",\"chords\":[],\"voices\":[\"C3 G3\",\"D3 A3\",\"D3 A3\"],\"steps\":[{\"pairs\":["
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
                "{\"strictness\":\"band\",\"chords\":[\"G\",\"Ab\"],\"voices\":[\"G2 B3 D4 G4\",\"Ab2 C4 Eb4 Ab4\"],",
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
                "{\"error\":\"" + message + "\",\"at\":" + at + "}\n",
                Run.of("motion " + text + " --json").result(2));
    }

    @Test
    void tellsAKey() {
        assertEquals(
                "{\"kind\":\"key\",\"key\":\"Eb major\",\"signature\":-3,\"tones\":" + notes("Eb F G Ab Bb C D")
                        + ",\"triads\":" + notes("Eb Fm Gm Ab Bb Cm Ddim") + ",\"numbers\":"
                        + notes("1 2- 3- 4 5 6- 7o")
                        + ",\"relative\":\"C minor\",\"parallel\":\"Eb minor\"}",
                json("key Eb"));
    }

    private static final String BORROWED =
            "\"skill\":\"borrowed-chord\",\"subject\":\"bVI\",\"key\":\"D major\",\"seed\":4,"
                    + "\"prompt\":\"Which chord is ♭VI in D major, the major chord on the lowered sixth?\",\"form\":\"chord\"";

    @Test
    void asksUnderASeed() {
        assertEquals("{" + BORROWED + "}", json("ask borrowed-chord of bVI in D --seed 4"));
        assertEquals(json("ask interval in D --seed 12"), json("ask interval in D --seed 12"));
        assertEquals("{" + BORROWED.replace(":4,", ":7,") + "}", json("ask borrowed-chord of bVI in D"));
    }

    @Test
    void judgesAnAnswer() {
        Run right = Run.of("ask borrowed-chord of bVI in D --seed 4 --json --answer Bb D F");
        assertEquals(
                "{" + BORROWED + ",\"verdict\":\"right\",\"misconception\":null,"
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
                "{\"kind\":\"play\",\"tempo\":84,\"pattern\":\"block\",\"times\":1,\"remark\":\"\"}",
                json("play IV I in D at 84"));
        assertEquals("{\"message\":\"Silence.\"}", json("stop"));
    }

    @Test
    void listsLessonsAndBeginsOne() {
        String lessons = json("lessons");
        assertEquals(
                "{\"lessons\":[{\"number\":\"1.1\",\"slug\":\"steps-and-half-steps\",\"title\":\"Steps and half steps\","
                        + "\"book\":\"How scales are built\",\"grade\":1},",
                lessons.substring(0, lessons.indexOf("},") + 2));
        assertEquals(63, lessons.split("\"number\"").length - 1);
        assertEquals(
                "{\"kind\":\"lesson\",\"number\":\"5.2\",\"slug\":\"the-chord-under-the-sixth\","
                        + "\"title\":\"The chord under the sixth\",\"grade\":5,\"key\":\"A major\"}",
                json("learn 5.2 in A"));
    }

    @Test
    void refusesToAskInAKeyTooFarOut() {
        assertEquals(
                "{\"error\":\"\\\"F## minor\\\" is not a key to ask in: steps has no question there. "
                        + "Example: ask steps in C\",\"at\":1}\n",
                Run.of("ask steps in F##m --json").result(2));
    }

    @Test
    void saysWhereALineCannotBeRead() {
        assertEquals(
                "{\"error\":\"\\\"Hm\\\" is not a chord: expected a letter from A to G at character 1, found 'H'. "
                        + "Example: Abmaj7\",\"at\":8}\n",
                Run.of("show Abmaj7 Hm --json").result(2));
        assertEquals(
                "{\"error\":\"\\\"H\\\" is not a key: expected a letter from A to G at character 1, found 'H'. "
                        + "Example: D major\",\"at\":6}\n",
                Run.of("show C in H --json").result(2));
    }
}
