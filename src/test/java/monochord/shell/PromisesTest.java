package monochord.shell;

import static monochord.shell.PromisedJson.NONE;
import static monochord.shell.PromisedJson.changed;
import static monochord.shell.PromisedJson.chords;
import static monochord.shell.PromisedJson.json;
import static monochord.shell.PromisedJson.notes;
import static monochord.shell.PromisedJson.row;
import static monochord.shell.PromisedJson.rowOn;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the command line promises to scripts, row by row, whole lines of JSON.
 *
 * <p>Source: the chords are spelled by hand, triads and sevenths in thirds on the scale named, the scales by their steps
 * (Integrated Music Theory, lessons 4, 8 and 16a; Open Music Theory, "scales"). Which modes hold a borrowed chord was
 * found by writing the modes out.
 */
class PromisesTest {
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
                        row("I 1 D", "D F# A", NONE, "D major"));
        assertEquals(expected + "}", json("show IV bVI I in D"));
        assertEquals(expected + "}", json("show 4 b6 1 in D"));
        assertEquals(expected + ",\"oneChord\":\"Gm\"}", json("show G Bb D in D"));
        assertEquals(expected + ",\"oneChord\":\"Gm\"}", json("G Bb D in D"));
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
                withoutOrigin(json("numeral bVI in C")));
        assertEquals(row("V7/V 27 F7", "F A C Eb", "Eb lydian", "Eb major"), withoutOrigin(json("numeral V7/V in Eb")));
        assertEquals(
                row("iiø7 2-7b5 Dm7b5", "D F Ab C", "C minor, C harmonic minor", "C major"),
                withoutOrigin(json("numeral Dm7b5 in C")));
        assertEquals(row("VII 7 G", "G B D", NONE, "A minor"), withoutOrigin(json("numeral VII in Am")));
        assertEquals(row("IV 4 Ab", "Ab C Eb", NONE, "Eb major"), withoutOrigin(json("numeral 4 in Eb")));
        assertEquals(
                rowOn("E", "I6 1/3 C/E".split(" "), "C E G", NONE, "C major"), withoutOrigin(json("numeral C/E in C")));
    }

    private static String withoutOrigin(String line) {
        return line.replaceFirst("\"kind\":\"numeral\",", "").replaceFirst(",\"origin\":\"[^\"]*\"", "");
    }

    /** Sources: Open Music Theory 2, "Substitutions"; Open Music Theory (2014), "augmentedSixthChords". */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            Db7 in C  | []          | the tritone substitute of V7, G7
            Ab7 in C  | []          | the tritone substitute of V7/V, D7; going to G it sounds as Ger65, with F♯ for G♭
            Ab7 in Cm | []          | the tritone substitute of V7/V, D7; going to G it sounds as Ger65, with F♯ for G♭
            Eb7 in C  | []          | the tritone substitute of V7/ii, A7
            Bb7 in C  | ["C minor"] | the backdoor dominant, up a whole step to C; borrowed from C minor
            F7 in C   | ["C dorian","C melodic minor"] | borrowed from C dorian (also melodic minor)
            E7 in C   | []          | its goal is Am
            C in C    | []          | one of the key's own chords
            """)
    void saysWhereAChordComesFrom(String chord, String sources, String origin) {
        String line = json("numeral " + chord);
        assertTrue(line.endsWith("\"origin\":\"" + origin + "\"}"), line);
        assertEquals(sources, line.replaceAll(".*\"borrowedFrom\":(\\[[^]]*\\]).*", "$1"));
    }

    @Test
    void namesNotesBestFirst() {
        assertEquals(
                "{\"kind\":\"names\",\"notes\":[\"C\",\"E\",\"G\",\"A\"],\"names\":[{\"symbol\":\"C6\",\"bySound\":false},"
                        + "{\"symbol\":\"Am7/C\",\"bySound\":false}]}",
                json("name C E G A"));
        assertEquals(
                "{\"kind\":\"names\",\"notes\":[\"A\",\"C\",\"E\",\"G\"],\"names\":[{\"symbol\":\"Am7\",\"bySound\":false},"
                        + "{\"symbol\":\"C6/A\",\"bySound\":false}]}",
                json("name A-C-E-G in C"));
    }

    @Test
    void listsWhatAKeyBorrowsFromAMode() {
        String key = "A major";
        String mixolydian = "A mixolydian";
        String three = "A mixolydian, A dorian, A minor";
        assertEquals(
                "{\"kind\":\"borrow\",\"key\":\"A major\","
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
                "{\"kind\":\"borrow\",\"key\":\"D major\","
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
                "{\"kind\":\"error\",\"error\":\"\\\"vi\\\" is not a borrowed chord: it is the key's own chord in C major. "
                        + "Example: borrow bVI in D\",\"at\":1}\n",
                Run.of("borrow vi in C --json").result(2));
    }

    /**
     * Source of the counts: McGill Billboard annotations 2.0 (Burgoyne, Wild, Fujinaga, ISMIR 2011; CC0), RS200 (de Clercq, Temperley,
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
                "{\"kind\":\"after\",\"key\":\"C major\",\"numeral\":\"bVI\",\"symbol\":\"Ab\",\"next\":["
                        + "{\"numeral\":\"bVII\",\"symbol\":\"Bb\",\"road\":\"borrowed\",\"reason\":\"It stays borrowed: the walk up ♭VI ♭VII I. "
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
                "{\"kind\":\"error\",\"error\":\"\\\"bVI V\\\" is not a chord: one chord is asked for, and several stand here. "
                        + "Example: after bVI in D\",\"at\":1}\n",
                Run.of("after bVI V in C --json").result(2));
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
}
