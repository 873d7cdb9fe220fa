package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The sentences {@code key of} and {@code harmonise} at the command line. */
class KeyAndHarmoniseTest {
    private static final String SHEET = "src/test/resources/monochord/song/musicxml/auld-lang-syne.musicxml";

    private static String json(String sentence) {
        return PromisedJson.json(sentence);
    }

    /** Source: worked out by hand; the name of the loop is that of Open Music Theory, version 2, page "4-chord-schemas". */
    @Test
    void saysTheKeyOfALoop() {
        assertEquals("""
                In C major
                I vi IV V I vi IV V I vi IV V
                   - It begins on the tonic chord, C.
                   - G leads to C: the dominant comes home.
                   - All its chords are the key's own: I vi IV V.
                It can go round and round. G leads back to C as dominant to tonic.
                Textbooks call this loop doo-wop.
                To end it, close with G C, F C or A♭ B♭ C, and hold the last chord for a bar or
                two. For a tag, play the last two bars again before you end.
                """, Run.of("key of C Am F G C Am F G C Am F G").result(0));
    }

    /** Source: worked out by hand; pivot chords after Open Music Theory (2014), page "modulation". */
    @Test
    void saysWhereTheKeyChanges() {
        assertEquals("""
                It changes key
                C major: C Am Dm G7 C
                   - I vi ii V7 I
                G major: D7 G Em Am D7 G
                   - V7 I vi ii V7 I
                   - C belongs to both: I in C major, IV in G major.
                """, Run.of("key of C Am Dm G7 C D7 G Em Am D7 G").result(0));
    }

    /**
     * A note with its octave in front makes notes of the letters behind it; fives alone are chords without a third. Source:
     * common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({
        "C4 D E F G A B C5 G E C4, 'It begins and ends on C, the tonic.'",
        "D4 E F A G E D, 'It begins and ends on D, the tonic.'",
        "C5 F5 G5 C5, 'It begins and ends on the tonic chord, C5.'"
    })
    void hearsNotesAsATune(String music, String why) {
        assertTrue(Run.of("key of " + music).result(0).contains(why));
    }

    /** Source: worked out by hand. */
    @Test
    void saysWhereABareTuneChangesKey() {
        String first = "G4 B D5 B4 | C5 A4 D5:2 | B4 G A F# | G4:4 | D5 C5 B4 A | G4 A B:2 | C5 B4 A F# | G4:4 | ";
        String second =
                "A4 C#5 E5 C#5 | D5 F#5 E5 C#5 | D5 C#5 B4 C#5 | A4:4 | C#5 D5 E5 C#5 | D5 B4 A:2 | G4 F# E C#5 | D5:4 |";
        assertEquals("""
                It changes key
                G major: bars 1 to 8
                D major: bars 9 to 16
                   - G fits just before and belongs to both: I in G major, IV in D major.
                """, Run.of("key of | " + first + second).result(0));
        assertEquals(
                """
                It changes key
                C major: notes 1 to 26
                D major: notes 27 to 52
                   - A direct change: no plain chord of both keys fits just before.
                """,
                Run.of("key of C4 D E C F A G:2 E4 F G E D E D:2 G4 A B G C5 B A:2 G4 F E D C4:4 D4 E F# D G4 B"
                                + " A:2 F#4 G A F# E F# E:2 A4 B C#5 A4 D5 C# B4:2 A4 G F# E D4:4")
                        .result(0));
    }

    /** Source: worked out by hand. */
    @Test
    void putsChordsUnderATune() {
        assertEquals(
                """
                In C major
                C . | G7 . | C . |
                bar     chord           or        why
                1       C       I       Am, F     It holds every note here: C and E.
                2       G7      V7      C, F      It holds every note here: G and F. It leads
                                                  home to C.
                3       C       I       F, Am     C is its root. The tune ends at home.
                play lets you hear it; recolour finds where such chords could take a colour.
                Many chords are right under a tune: these are the plain ones, for your ear to
                decide. Agree them with the band.
                """,
                Run.of("harmonise | C4 E4 C4 E4 | G4 F4 D4 B3 | C4:4 | in C").result(0));
    }

    @Test
    void saysItInSentencesWherePlainIsAsked() {
        assertEquals(
                """
                In C major
                C . | G7 . | C . |
                bar 1: C, I, or Am, F. It holds every note here: C and E.
                bar 2: G7, V7, or C, F. It holds every note here: G and F. It leads home to C.
                bar 3: C, I, or F, Am. C is its root. The tune ends at home.
                play lets you hear it; recolour finds where such chords could take a colour.
                Many chords are right under a tune: these are the plain ones, for your ear to
                decide. Agree them with the band.
                """,
                Run.of("harmonise | C4 E4 C4 E4 | G4 F4 D4 B3 | C4:4 | in C --plain")
                        .result(0));
    }

    @Test
    void promisesTheFieldsOfAKey() {
        String said = json("key of Am F C G");
        assertTrue(said.startsWith("{\"kind\":\"keys\",\"keys\":[{\"key\":\"C major\",\"share\":0."), said);
        assertTrue(said.contains("\"spans\":[{\"from\":0,\"to\":3,\"key\":\"C major\",\"pivot\":null}]"), said);
        assertTrue(
                said.contains(
                        "\"loop\":true,\"lead\":\"G leads back to Am, a deceptive turn: the dominant would go to C.\""
                                + ",\"schema\":\"singer/songwriter\""),
                said);
        assertTrue(json("key of C F G7 C").contains("\"loop\":false,\"lead\":null,\"schema\":null,\"ending\":null"));
        assertTrue(json("key of C4 E4 G4 C5:3").contains("\"spans\":[]"));
    }

    @Test
    void promisesTheFieldsOfASlot() {
        assertEquals(
                "{\"kind\":\"harmonise\",\"key\":\"C major\",\"slots\":["
                        + "{\"beat\":-1,\"beats\":1,\"symbol\":\"G7\",\"numeral\":\"V7\",\"others\":[\"C\",\"Em\"],"
                        + "\"why\":[\"G is its root.\",\"It leads home to C.\"],"
                        + "\"othersWhy\":[\"G is its fifth.\",\"G is its third.\"]},"
                        + "{\"beat\":0,\"beats\":3,\"symbol\":\"C\",\"numeral\":\"I\",\"others\":[\"Am\",\"F\"],"
                        + "\"why\":[\"It holds every note here: C and E.\"],"
                        + "\"othersWhy\":[\"It holds every note here: C and E.\",\"C is its fifth.\"]},"
                        + "{\"beat\":3,\"beats\":2,\"symbol\":\"C\",\"numeral\":\"I\",\"others\":[\"F\",\"Am\"],"
                        + "\"why\":[\"C is its root.\",\"The tune ends at home.\"],"
                        + "\"othersWhy\":[\"C is its fifth.\",\"C is its third.\"]}],\"remarks\":[]}",
                json("harmonise G4 | C5 E5 C5 | C5:2 in C metre 3/4"));
    }

    @Test
    void promisesTheFieldsOfChordsThatCarryANote() {
        String said = json("harmonise C G under A in C");
        assertTrue(
                said.startsWith(
                        "{\"kind\":\"harmonise\",\"key\":\"C major\",\"note\":\"A\",\"before\":\"C\",\"goal\":\"G\","
                                + "\"chords\":[{\"symbol\":\"F\",\"numeral\":\"IV\",\"why\":[\"A is its third.\","),
                said);
    }

    @Test
    void readsALeadSheet() {
        assertTrue(Run.of("key --file " + SHEET).result(0).contains("In F major"));
        assertTrue(json("key of --file " + SHEET).contains("\"keys\":[{\"key\":\"F major\""));
        assertTrue(json("harmonise --file " + SHEET).startsWith("{\"kind\":\"harmonise\",\"key\":\"F major\""));
    }

    /** Lengths are in quarters in every metre: a bar of 6/8 has three. */
    @Test
    void goesByTheMetre() {
        assertTrue(json("harmonise C4 E4 G4 C5 E5 C5 in C metre 6/8").contains("\"beat\":1.5,\"beats\":1.5"));
    }

    /** What was typed, what was expected, one that works. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            key of                      | "" is not music: expected chords or a tune. Example: key of Am F C G
            key of E dorian             | "E dorian" is not music: a scale names its key itself; expected chords or a tune. Example: key of Am F C G
            key of Am F over C          | "Am F" is not a melody: a tune is expected before over. Example: key of E4 D4 C4:2 over C G C
            key D of C                  | "D of C" is not a key: expected major, minor or another mode at character 2, found ' '. Example: D major
            harmonise F C G under A     | "F C G" is not one chord or two: at most the chord before and the chord behind are read. Example: harmonise F C under A in C
            harmonise under H           | "H" is not a note name: expected a letter from A to G at character 1, found 'H'. Example: Eb
            harmonise C4:9999 metre 4/4 | "C4:9999 metre 4/4" is not a tune to harmonise: at most 1000 bars get chords at once. Example: harmonise E4 D4 C4 D4 | E4 E4 E4:2 in C
            harmonise C4 metre 5        | "5" is not a metre: expected beats and their value such as 3/4 or 6/8. Example: 3/4
            """)
    void refusesWithAnExample(String sentence, String message) {
        Run run = Run.of(sentence, "--json");
        assertEquals(2, run.status());
        assertTrue(
                run.out().replace("\\\"", "\"").startsWith("{\"kind\":\"error\",\"error\":\"" + message),
                () -> message + " but was " + run.out());
    }

    @Test
    void refusesAMetreThatIsNotThatOfTheBars() {
        assertTrue(
                Run.of("harmonise | C4 D4 | E4 F4 | in C metre 3/4", "--json")
                        .out()
                        .contains(
                                "is not the metre of this tune: the bars of the tune have 2 quarters, and these would have 3."));
        assertTrue(
                Run.of("recolour C | F | in C under C4 E4 G4 E4 | C5:4 | metre 3/4", "--json")
                        .out()
                        .contains(
                                "is not the metre of this tune: the bars of the tune have 4 quarters, and these would have 3."));
    }

    /** Common practice, no source. Said only where it is clear: these chords are the everyday ones of the other key and few are those of this one. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            recolour D G A D in C             | Read in C major, though these chords seem to stand in D major.
            numeral Eb Ab Bb Eb in D          | Read in D major, though these chords seem to stand in Eb major.
            play D G A D in C                 | Read in C major, though these chords seem to stand in D major.
            compare D G A D vs D A G D in C   | Read in C major, though these chords seem to stand in D major.
            voice D G A D                     | Read in C major, though these chords seem to stand in D major.
            transpose D G A D from C to F     | Read in C major, though these chords seem to stand in D major.
            """)
    void saysWhereTheMusicStandsInAnotherKey(String sentence, String remark) {
        assertTrue(Run.of(sentence, "--ascii").result(0).stripTrailing().endsWith(remark));
        assertTrue(json(sentence).contains(",\"aside\":\"" + remark.replace("Eb", "E♭") + "\""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "recolour Am F C G in G",
                "recolour C F G C in C",
                "voice C Bb F C in C",
                "voice C Eb Bb F in C",
                "numeral C Ab Bb C in C",
                "numeral IV V bVI bVII bIII in C",
                "recolour Am F C G in Am"
            })
    void isQuietWhereItMayBeSo(String sentence) {
        assertFalse(json(sentence).contains("\"aside\""));
    }

    /** The chords come where the metre has them, though the tune was written without bar lines. */
    @Test
    void playsTheChordsInTheMetre() {
        String said = new Run.Outside()
                .typing("harmonise C4 E4 G4 B4 D5 G4 C5:3 in C metre 3/4\nplay\n")
                .run()
                .result(0);
        assertTrue(said.contains("Playing | C4 E4 G4 | B4 D5 G4 | C5:3 | over C | G7 | C | in C major at 84."), said);
    }

    /** Of three beats the chord that is put in has the last. Common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            recolour C | F | C | G | C | in C metre 3/4                                            ; C | F . Fm | C | G | C |
            recolour C | F G | C | in C metre 6/8 with passing diminished at 3                     ; C | F . F♯dim7 G . . | C |
            recolour C | F | G | C | in C metre 6/8 with passing diminished at 3                   ; C | F F♯dim7 | G | C |
            recolour C | F | G | C | in C metre 3/4 with passing diminished at 3                   ; C | F . F♯dim7 | G | C |
            recolour C | F | C | G | C | in C metre 6/8                                            ; C | F Fm | C | G | C |
            recolour C | F | C | G | C | in C                                                      ; C | F Fm | C | G | C |
            recolour C | F | C | G | C | in C under C4:2 E4 F4:2 C5 G4:2 E4 D4 B3 G3 C4:3 metre 3/4 ; C | F . Fm | C | G | C |
            """)
    void recoloursInTheMetre(String sentence, String played) {
        String said = new Run.Outside().typing(sentence + "\nplay\n").run().result(0);
        assertTrue(said.replaceAll("\\s+", " ").contains(played + " in C major at 84."), said);
    }

    @Test
    void answersEachLine() {
        List<String> lines = new Run.Outside()
                .typing("C F G C\nAm Dm E Am\n")
                .run("key", "of", "-", "--json")
                .result(0)
                .lines()
                .toList();
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).contains("\"key\":\"C major\"") && lines.get(1).contains("\"key\":\"A minor\""));
    }
}
