package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What comes next, what is borrowed and where the capo goes, as a learner sees it. Source: the words are ours. */
class WaysOnTest {
    @Test
    void saysWhereAChordGoesNext() {
        List<String> lines = Run.of("after bVI in C").result(0).lines().toList();
        assertEquals("""
                After A♭, ♭VI in C major
                Stays borrowed
                  ♭VII    B♭      It stays borrowed: the walk up ♭VI ♭VII I; about one in four,
                                  23 songs.
                  ♭II     D♭      It stays borrowed: the root falls a fifth, darker still; about
                                  one in nine, 14 songs.
                  ♭III    E♭      It stays borrowed: fourths falling all the way home, ♭VI ♭III
                                  ♭VII IV I; about one in nine, 17 songs.
                Falls to the five
                  V       G       The root sinks a half step onto the dominant; about one in
                                  five, 22 songs.
                  V7sus4  G7sus4  Back by a suspension: C stays as its fourth, then falls to B.
                Goes home
                  I       C       Straight home by a third, around the tonic that both share;
                                  about one in eight, 19 songs.
                Counted in chart songs: McGill Billboard, J. A. Burgoyne, J. Wild and I.
                Fujinaga, 2011 (CC0).
                What ten songs or more do one time in twenty is all here.
                Classical scores differ: V 14, Ger65 13, IV 13, i 10, iv7 10, vii°7/V 9, I 9 of
                178 in When in Rome (M. Gotham and others, CC BY-SA 4.0).
                """, Run.of("after bVI in C").result(0));
    }

    /** Source: the counts that travel with the program, Billboard; those below a share of five in a hundred may stay out. */
    @ParameterizedTest(name = "after {0}: {1}")
    @CsvSource({"II, I, 238, 1196, 42", "III, IV, 67, 400, 22", "iii, V, 178, 1479, 33", "V, IV, 2061, 9163, 254"})
    void nothingThatSongsDoIsMissing(String from, String to, int count, int of, int songs) {
        String json = Run.of("after " + from + " in C --json").out();
        assertTrue(
                json.matches(".*\\{\"numeral\":\"" + to + "\",[^{}]*\"count\":" + count + ",\"of\":" + of
                        + ",\"songs\":" + songs + "[},].*\\s*"),
                json);
    }

    @Test
    void theLikeliestComesFirst() {
        String said = Run.of("after V in C").result(0).replaceAll("\\s+", " ");
        assertTrue(said.indexOf("Goes home I C") < said.indexOf("Goes round IV F"), said);
        assertTrue(said.indexOf("IV F It steps back") < said.indexOf("vi Am Deceptive"), said);
    }

    @Test
    void plainSaysOneWayInASentenceOrTwo() {
        assertTrue(Run.of("after bVI in C --plain --ascii").result(0).startsWith("""
                After Ab, bVI in C major
                Stays borrowed:
                bVII, Bb: it stays borrowed: the walk up bVI bVII I; about one in four, 23
                songs.
                """));
    }

    /** Never a share of a hundred from fewer than ten songs. */
    @Test
    void fewSongsGetNoPercentage() {
        String said = Run.of("after VI in Am").result(0).replaceAll("\\s+", " ");
        assertTrue(said.contains("VII G The walk up VI VII i; in only eight songs."), said);
        assertTrue(said.contains("RS200, T. de Clercq and D. Temperley, 2011 and 2013 (CC BY 4.0)"), said);
        for (String numeral : List.of("bIII", "bII", "v", "iio", "i", "III", "V7/ii")) {
            String ways = Run.of("after " + numeral + " in C").result(0).replaceAll("\\s+", " ");
            assertFalse(ways.matches(".*about one in [a-z0-9]+, [1-9] songs.*"), ways);
        }
    }

    @Test
    void oneBorrowedChordIsToldWhole() {
        assertEquals("""
                ♭VI in D major is B♭, spelled B♭ D F.
                From D minor (also phrygian, locrian, harmonic minor), three degrees darker; it
                turns F♯ into F and B into B♭.
                Reached from V: deceptive: ♭VI where the tonic was expected.
                Reached from I: a colour by a third: the tonic stays as its third.
                Reached from vi: the root slips down a half step, the tonic stays.
                Left to ♭VII: it stays borrowed: the walk up ♭VI ♭VII I.
                Left to V7sus4: back by a suspension: D stays as its fourth, then falls to C♯.
                Left to V: the root sinks a half step onto the dominant.
                Under the tune: 1 (D) rests; 2 (E), 4 (G) and 5 (A) colour; 3 (F♯), 6 (B) and 7
                (C♯) clash on a strong beat.
                The rule about the tune is common practice, no source. More ways on: after ♭VI.
                A changed chord is agreed with the band before anyone plays it.
                """, Run.of("borrow bVI in D").result(0));
    }

    /** Source: the modes by their signatures, from bright to dark. */
    @Test
    void theTableGoesFromBrightToDark() {
        List<String> headings = Run.of("borrow in D")
                .result(0)
                .lines()
                .filter(line -> line.startsWith("From"))
                .toList();
        assertEquals(
                List.of(
                        "From D lydian, one degree brighter",
                        "From D harmonic minor, two degrees darker",
                        "From D minor, three degrees darker",
                        "From D phrygian, four degrees darker"),
                headings);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                "after bVI",
                "after V7/V",
                "after Vsus4",
                "after bVII",
                "after i",
                "borrow",
                "borrow bVImaj7",
                "borrow bII",
                "transpose 4 1 5 1 capo"
            })
    void staysWithinEightyColumnsInEveryKey(String sentence) {
        int lines = 0;
        for (Key key : Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList()) {
            for (String option : List.of("--ascii", "--plain")) {
                Run run = new Run.Outside()
                        .run((sentence + " in " + key.tonic() + (key.isMinor() ? "m" : "") + " " + option).split(" "));
                assertTrue(run.status() == 0 || run.err().contains("the key's own chord"), run::err);
                run.lines().forEach(line -> assertTrue(line.codePointCount(0, line.length()) <= 80, line));
                assertFalse(option.equals("--ascii") && !run.out().chars().allMatch(c -> c < 128), run::out);
                lines += run.lines().size();
            }
        }
        assertTrue(lines > 200, sentence);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            after            | "" is not a progression: expected a chord at character 1, found the end.
            after H          | "H" is not a chord: expected a letter from A to G at character 1, found 'H'.
            after C in H     | "H" is not a key: expected a letter from A to G at character 1, found 'H'.
            after C G        | "C G" is not a chord: one chord is asked for, and several stand here.
            after C major    | "major" is not a chord: expected a letter from A to G at character 1, found 'm'.
            borrow bVI bVII  | "bVI bVII" is not a borrowed chord: one is shown at a time.
            borrow C         | "C" is not a borrowed chord: it is the key's own chord in C major.
            borrow gibberish | "gibberish" is not a scale: no scale has this name.
            transpose C capo 99 | "99" is not a fret: expected a number from 0 to 11.
            transpose capo   | "" is not a progression: expected a chord at character 1, found the end.
            """)
    void whatCannotBeReadIsSaid(String sentence, String first) {
        assertEquals(
                first,
                Run.of(sentence)
                        .message(2)
                        .replace("\n", " ")
                        .replaceAll("(?<=\\.) (Example|Form).*", "")
                        .strip());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "C##########",
                "bbbbVI",
                "V7/V/V/V/V",
                "Cb##",
                "C(",
                "/",
                "b",
                "64",
                "Ger65/V",
                "N6/ii",
                "C13#11b9/F##",
                "5/5/5",
                "G7sus4sus2",
                "Cad64/V",
                "viio7/viio7",
                "\u0000",
                "%",
                "|",
                "C |",
                "Abbbb"
            })
    void hostileChordsEndInAnAnswerOrAMessage(String chord) {
        for (String verb : List.of("after", "borrow")) {
            for (String key : List.of("C", "Cb", "G#m", "F dorian")) {
                Run run = new Run.Outside().run(verb, chord, "in", key, "--json");
                assertTrue(run.status() == 0 || run.status() == 2, () -> verb + " " + chord + ": " + run);
                assertTrue(run.out().startsWith("{\"kind\":\"" + (run.status() == 0 ? verb : "error")), run::out);
                assertEquals("", run.err());
            }
        }
    }

    @ParameterizedTest(name = "after {0}")
    @ValueSource(strings = {"I", "ii", "IV", "V7", "vi", "bVI", "bVII", "bIII", "iv", "V7/V"})
    void theAnswerStandsOnOneScreen(String numeral) {
        long lines = Run.of("after " + numeral + " in Db").result(0).lines().count();
        assertTrue(lines <= 21, numeral + " takes " + lines);
    }
}
