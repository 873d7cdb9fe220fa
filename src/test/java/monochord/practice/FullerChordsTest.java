package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import monochord.theory.note.Unreadable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sevenths, suspensions, added tones, inversions and applied dominants; what is expected was typed from the sources. */
class FullerChordsTest {
    private static void assertExpected(String skill, String subject, String key, String expected) {
        Question question = Asked.question(skill, subject, key);
        assertEquals(expected, question.expected());
        assertEquals(Grade.RIGHT, question.judge(expected).grade(), question.judge(expected)::toString);
    }

    /**
     * Source: MusicXML 4.0, {@code kind-value}, for the kinds; Open Music Theory (2014), "triads", for the suffixes; the
     * spellings from C, E flat and F sharp in thirds.
     */
    @ParameterizedTest(name = "{1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            seventh-spelling | C7       | C E G Bb
            seventh-spelling | Eb7      | Eb G Bb Db
            seventh-spelling | F#7      | F# A# C# E
            seventh-spelling | Cmaj7    | C E G B
            seventh-spelling | Ebmaj7   | Eb G Bb D
            seventh-spelling | F#maj7   | F# A# C# E#
            seventh-spelling | Cm7      | C Eb G Bb
            seventh-spelling | Ebm7     | Eb Gb Bb Db
            seventh-spelling | F#m7     | F# A C# E
            seventh-spelling | Cm7b5    | C Eb Gb Bb
            seventh-spelling | Ebm7b5   | Eb Gb Bbb Db
            seventh-spelling | F#ø      | F# A C E
            seventh-spelling | Cdim7    | C Eb Gb Bbb
            seventh-spelling | Ebdim7   | Eb Gb Bbb Dbb
            seventh-spelling | F#dim7   | F# A C Eb
            seventh-spelling | CmMaj7   | C Eb G B
            seventh-spelling | EbmMaj7  | Eb Gb Bb D
            suspension       | Csus4    | C F G
            suspension       | Ebsus4   | Eb Ab Bb
            suspension       | F#sus4   | F# B C#
            suspension       | Csus2    | C D G
            suspension       | Ebsus2   | Eb F Bb
            suspension       | F#sus2   | F# G# C#
            suspension       | C7sus4   | C F G Bb
            suspension       | Eb7sus4  | Eb Ab Bb Db
            suspension       | F#7sus4  | F# B C# E
            added-tone       | Cadd9    | C E G D
            added-tone       | Ebadd9   | Eb G Bb F
            added-tone       | F#add9   | F# A# C# G#
            added-tone       | Cm(add9) | C Eb G D
            added-tone       | C6       | C E G A
            added-tone       | Eb6      | Eb G Bb C
            added-tone       | F#6      | F# A# C# D#
            added-tone       | Cm6      | C Eb G A
            added-tone       | F#m6     | F# A C# D#
            """)
    void spells(String skill, String chord, String notes) {
        Question question = Asked.question(skill, chord, "C");
        assertEquals(Grade.RIGHT, question.judge(notes).grade(), question.judge(notes)::toString);
        assertEquals(question.expected(), notesOf(question, notes));
    }

    /** The expected answer goes up in the stack; the rows above name the added tone last. */
    private static String notesOf(Question question, String notes) {
        boolean same = java.util.Set.of(question.expected().split(" ")).equals(java.util.Set.of(notes.split(" ")));
        return same ? question.expected() : notes;
    }

    /** Source: Integrated Music Theory, lesson 6a, example 3: the inversions of the sevenths of C major; and of triads. */
    @ParameterizedTest(name = "{0} in C is {1}")
    @CsvSource({
        "ii65, Dm7/F, F A C D", "iii43, Em7/B, B D E G", "IVmaj42, Fmaj7/E, E F A C", "V43, G7/D, D F G B",
        "viiø42, Bm7b5/A, A B D F", "Imaj65, Cmaj7/E, E G B C", "ii6, Dm/F, F A D", "iii64, Em/B, B E G",
        "V6, G/B, B D G", "vi64, Am/E, E A C", "viio64, Bdim/F, F B D"
    })
    void invertedInC(String numeral, String chord, String notes) {
        assertExpected("inversion", numeral, "C", chord);
        assertExpected("inversion", chord, "C", chord);
        String prompt = Asked.question("inversion", numeral, "C").prompt().toString();
        assertTrue(prompt.startsWith("From the bass up: " + notes + "."), prompt);
    }

    /** Source: Open Music Theory (2014), "appliedChords": the table of secondary dominants. */
    @ParameterizedTest(name = "{1} in {0} is {2}, {3}")
    @CsvSource({
        "C, V7/ii, A7, A C# E G", "C, V7/iii, B7, B D# F# A", "C, V7/IV, C7, C E G Bb", "C, V7/V, D7, D F# A C",
        "C, V7/vi, E7, E G# B D", "G, V7/iii, F#7, F# A# C# E", "D, V7/vi, F#7, F# A# C# E",
                "A, V7/iii, G#7, G# B# D# F#",
        "E, V7/iii, D#7, D# F## A# C#", "B, V7/ii, G#7, G# B# D# F#", "F, V7/V, G7, G B D F",
                "Bb, V7/IV, Bb7, Bb D F Ab",
        "Eb, V7/V, F7, F A C Eb", "Ab, V7/IV, Ab7, Ab C Eb Gb", "Db, V7/IV, Db7, Db F Ab Cb",
                "Gb, V7/IV, Gb7, Gb Bb Db Fb",
        "C, viio7/V, F#dim7, F# A C Eb", "D, viio7/ii, D#dim7, D# F# A C", "Eb, viio7/vi, Bdim7, B D F Ab"
    })
    void applied(String key, String numeral, String chord, String notes) {
        assertExpected("applied-dominant", numeral, key, chord);
        assertEquals(
                Grade.RIGHT,
                Asked.verdict("applied-dominant", numeral, key, notes).grade());
    }

    /**
     * Sources: the slash of a numeral taken for a bass, Integrated Music Theory, lesson 14a; a bass that belongs to no
     * chord, the third left in a suspension, B diminished seventh for half-diminished: common teaching experience, no source.
     */
    @ParameterizedTest(name = "{0} of {1}: {3} comes from {4}")
    @CsvSource(delimiter = '|', textBlock = """
            seventh-spelling | Cmaj7  | C | C E G Bb   | wrong-seventh
            seventh-spelling | C7     | C | C E G B    | wrong-seventh
            seventh-spelling | Bm7b5  | C | B D F Ab   | wrong-seventh
            seventh-spelling | C7     | C | C E G      | missing-note
            seventh-spelling | C7     | C | C Eb G Bb  | wrong-quality
            seventh-spelling | Cdim7  | C | C Eb Gb A  | spelled-by-sound
            seventh-spelling | F#m7   | C | F A C E    | letters-only
            seventh-spelling | C7     | C | C E G Bb D | extra-note
            suspension       | Gsus4  | C | G B C D    | third-kept
            suspension       | Gsus4  | C | G B D      | third-kept
            suspension       | Gsus4  | C | G A D      | wrong-degree
            suspension       | G7sus4 | C | G C D      | missing-note
            suspension       | Ebsus4 | C | Eb G# Bb   | spelled-by-sound
            suspension       | Ebsus4 | C | Eb A Bb    | wrong-degree
            added-tone       | Cadd9  | C | C E G Bb D | extra-note
            added-tone       | Cadd9  | C | C D G      | missing-note
            added-tone       | Cadd9  | C | C E G      | missing-note
            added-tone       | C6     | C | C E G B    | counted-from-zero
            added-tone       | F#add9 | C | F# A C G   | letters-only
            inversion        | C/E    | C | Em         | bass-for-root
            inversion        | C/E    | C | C          | wrong-bass
            inversion        | C/E    | C | C/G        | wrong-bass
            inversion        | G7/B   | C | Bdim       | bass-for-root
            inversion        | G7/B   | C | G/B        | missing-note
            applied-dominant | V7/V   | C | G7         | slash-for-bass
            applied-dominant | V/V    | C | G          | slash-for-bass
            applied-dominant | V7/V   | C | Dm7        | quality-of-the-key
            applied-dominant | V7/V   | C | Dmaj7      | wrong-seventh
            applied-dominant | V7/V   | C | D          | missing-note
            applied-dominant | V7/V   | C | D F A C    | quality-of-the-key
            """)
    void mistakes(String skill, String subject, String key, String answer, String misconception) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(misconception, verdict.misconception(), verdict::toString);
        assertTrue(!verdict.grade().isRight() && verdict.grade() != Grade.UNREADABLE, verdict::toString);
    }

    /** Sources: two readings of "2" and the sixth chord that is a minor seventh chord: customs differ, no source. */
    @ParameterizedTest(name = "{0} of {1}: {3} is right with a remark")
    @CsvSource(delimiter = '|', textBlock = """
            added-tone       | 2       | C | C D G
            seventh-spelling | Cmaj7   | C | C E B G
            inversion        | Am7/C   | C | C6
            applied-dominant | V7/V    | C | D7/F#
            suspension       | Csus4   | C | F C G
            """)
    void customaryAlternatives(String skill, String subject, String key, String answer) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(Grade.REMARK, verdict.grade(), verdict::toString);
    }

    /** Common practice, no source: how people write such answers down. */
    @ParameterizedTest(name = "{0} of {1} reads \"{3}\"")
    @CsvSource(delimiter = '|', textBlock = """
            inversion        | C/E     | C | C over E
            inversion        | C/E     | C | C, first inversion
            inversion        | C/E     | C | c / e
            inversion        | C/E     | C | C major in 1st inversion
            inversion        | G7/F    | C | G7 third inversion
            applied-dominant | V7/V    | C | D dominant seventh
            applied-dominant | V7/V    | C | d7
            applied-dominant | V7/V    | C | D, F#, A, C
            seventh-spelling | Abmaj7  | C | A flat C E flat G
            suspension       | Gsus4   | C | g-c-d
            """)
    void writings(String skill, String subject, String key, String answer) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(Grade.RIGHT, verdict.grade(), verdict::toString);
    }

    @ParameterizedTest(name = "{0} cannot be asked of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            seventh-spelling | C     | "C" is not a seventh chord: seventh chords in root position are asked. Example: Abmaj7
            seventh-spelling | xyz   | "xyz" is not a seventh chord: name it by its symbol or its numeral. Example: Abmaj7
            suspension       | C7    | "C7" is not a suspended chord: sus4, sus2 and 7sus4 are asked. Example: Gsus4
            added-tone       | Cmaj7 | "Cmaj7" is not a chord with an added tone: add9, 6, m(add9), m6 and add4 are asked. Example: Cadd9
            inversion        | C     | "C" is not an inverted chord: one of its own tones lies in the bass, not the root. Example: C/E
            inversion        | F/G   | "F/G" is not an inverted chord: one of its own tones lies in the bass, not the root. Example: C/E
            applied-dominant | V     | "V" is not an applied chord: a slash and its goal stand behind it. Example: V7/V
            transposition    | F C   | "F C" is not a row to transpose: it ends in to and a key, or in for and an instrument. Example: F C G to Eb
            transposition    | F C to C | "F C to C" is not a row to transpose: both keys have one tonic. Example: F C G to Eb
            transposition    | F C to Am | "F C to Am" is not a row to transpose: both keys are major, or both are minor. Example: F C G to Eb
            """)
    void refuses(String skill, String subject, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> Asked.question(skill, subject, "C"));
        assertEquals(message, refusal.getMessage());
    }
}
