package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is expected here was typed from the sources named at each table. */
class WorkedAnswersTest {
    /** Source: Open Music Theory (Shaffer, Hughes, Moseley, 2014), pages "scales" and "scales2"; CC BY-SA 4.0. */
    @ParameterizedTest(name = "{1} on the tonic of {0} goes {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | major          | W W H W W W H
            Db | major          | W W H W W W H
            A  | minor          | W H W W H W W
            G  | harmonic minor | W H W W H 3 H
            F# | melodic minor  | W H W W W W H
            D  | dorian         | W H W W W H W
            E  | phrygian       | H W W W H W W
            F  | lydian         | W W W H W W H
            G  | mixolydian     | W W H W W H W
            """)
    void steps(String key, String scale, String steps) {
        assertExpected("steps", scale, key, steps);
    }

    /** Source: Open Music Theory (2014), page "scales", for the patterns; the spellings follow from them. */
    @ParameterizedTest(name = "{0} is spelled {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C major           | C D E F G A B
            F# major          | F# G# A# B C# D# E#
            Gb major          | Gb Ab Bb Cb Db Eb F
            C# major          | C# D# E# F# G# A# B#
            Cb major          | Cb Db Eb Fb Gb Ab Bb
            E harmonic minor  | E F# G A B C D#
            G# harmonic minor | G# A# B C# D# E F##
            D# melodic minor  | D# E# F# G# A# B# C##
            Ab harmonic minor | Ab Bb Cb Db Eb Fb G
            A# melodic minor  | A# B# C# D# E# F## G##
            Eb minor          | Eb F Gb Ab Bb Cb Db
            D dorian          | D E F G A B C
            D phrygian        | D Eb F G A Bb C
            """)
    void scales(String scale, String notes) {
        assertExpected("scale-spelling", scale, "C", notes);
    }

    /** Source: Open Music Theory (2014), page "keySignatures". */
    @ParameterizedTest(name = "{0} has {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C        | none
            G        | 1 sharp
            A        | 3 sharps
            C#       | 7 sharps
            F        | 1 flat
            Eb       | 3 flats
            Cb       | 7 flats
            A minor  | none
            F# minor | 3 sharps
            Eb minor | 6 flats
            G minor  | 2 flats
            """)
    void signatures(String key, String signature) {
        assertExpected("key-signature", "", key, signature);
    }

    /** Source: Open Music Theory (2014), page "intervals"; the rows above E, B flat, A flat and F sharp by counting. */
    @ParameterizedTest(name = "{0} above {1} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            m2 | E  | F
            M2 | E  | F#
            m3 | Bb | Db
            M3 | E  | G#
            P4 | Bb | Eb
            A4 | C  | F#
            d5 | Bb | Fb
            P5 | E  | B
            m6 | Bb | Gb
            M6 | Bb | G
            m7 | E  | D
            M7 | E  | D#
            A2 | F# | G##
            d7 | C  | Bbb
            A5 | F# | C##
            d4 | Ab | Dbb
            """)
    void intervals(String interval, String tonic, String note) {
        assertExpected("interval", interval, tonic, note);
        assertExpected("interval", tonic + " " + note, "C", interval);
    }

    /** Source: chord spellings of Open Music Theory (2014), page "triads", on roots worked out by its rule. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C      | C E G
            Cm     | C Eb G
            Caug   | C E G#
            Cdim   | C Eb Gb
            Ebdim  | Eb Gb Bbb
            F#aug  | F# A# C##
            Abm    | Ab Cb Eb
            F#m    | F# A C#
            G#m    | G# B D#
            Eb     | Eb G Bb
            """)
    void triads(String chord, String notes) {
        assertExpected("triad-spelling", chord, "C", notes);
    }

    /** Source: Open Music Theory (2014), page "triads": the triads of a major key. */
    @ParameterizedTest(name = "in {0} the chord on {1} is {2}, {3}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | 3 | Em    | minor      | iii
            D  | 7 | C#dim | diminished | viio
            E  | 2 | F#m   | minor      | ii
            F# | 7 | E#dim | diminished | viio
            C# | 4 | F#    | major      | IV
            G  | 6 | Em    | minor      | vi
            F  | 4 | Bb    | major      | IV
            Eb | 3 | Gm    | minor      | iii
            Db | 6 | Bbm   | minor      | vi
            Gb | 4 | Cb    | major      | IV
            Cb | 7 | Bbdim | diminished | viio
            C minor | 3 | Eb   | major      | III
            C minor | 5 | G    | major      | V
            C minor | 2 | Ddim | diminished | iio
            C minor | 7 | Bb   | major      | VII
            """)
    void degrees(String key, String degree, String chord, String quality, String numeral) {
        assertExpected("degree-chord", degree, key, chord);
        assertExpected("degree-quality", degree, key, quality);
        assertExpected("chord-degree", degree, key, numeral);
        assertExpected("chord-degree", chord, key, numeral);
    }

    /** Source: Open Music Theory (2014), page "modalMixture", for which chords; each spelled a half step below its degree. */
    @ParameterizedTest(name = "in {0}: {1} is {2}, on {3}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | bVI  | Ab    | b6 | Ab
            G  | bVII | F     | b7 | F
            D  | bVI  | Bb    | b6 | Bb
            A  | bVI  | F     | b6 | F
            E  | bIII | G     | b3 | G
            B  | bII  | C     | b2 | C
            F# | bVI  | D     | b6 | D
            C# | bVII | B     | b7 | B
            F  | bIII | Ab    | b3 | Ab
            Bb | bII  | Cb    | b2 | Cb
            Eb | bVI  | Cb    | b6 | Cb
            Ab | bVI  | Fb    | b6 | Fb
            Db | bVI  | Bbb   | b6 | Bbb
            Gb | bVI  | Ebb   | b6 | Ebb
            Cb | bVI  | Abb   | b6 | Abb
            Gb | bII  | Abb   | b2 | Abb
            """)
    void borrowedOnLoweredDegrees(String key, String numeral, String chord, String degree, String note) {
        assertExpected("borrowed-chord", numeral, key, chord);
        assertExpected("lowered-degree", degree, key, note);
    }

    /** Source: the same; {@code bVImaj7} and the half-diminished second of Integrated Music Theory, lesson 16a. */
    @ParameterizedTest(name = "in {0} {1} has the notes {3}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | iv      | Fm     | F Ab C
            A  | iv      | Dm     | D F A
            Db | iv      | Gbm    | Gb Bbb Db
            G  | ii°     | Adim   | A C Eb
            Bb | i       | Bbm    | Bb Db F
            Ab | v       | Ebm    | Eb Gb Bb
            C  | iv7     | Fm7    | F Ab C Eb
            C  | bVImaj7 | Abmaj7 | Ab C Eb G
            D  | bVII7   | C7     | C E G Bb
            D  | iiø7    | Em7b5  | E G Bb D
            """)
    void borrowedWithoutALoweredRoot(String key, String numeral, String chord, String notes) {
        assertExpected("borrowed-chord", numeral, key, chord);
        assertEquals(
                Grade.RIGHT,
                Asked.verdict("borrowed-chord", numeral, key, notes).grade());
    }

    /** Source: which modes hold the chord follows from Open Music Theory (2014), page "scales2". */
    @ParameterizedTest(name = "{0} in C comes from {1}; {2} holds it too")
    @CsvSource(delimiter = '|', textBlock = """
            bVI  | C minor      | C phrygian
            bVII | C mixolydian | parallel minor
            iv   | C minor      | harmonic minor
            bIII | C dorian     | C minor
            i    | C dorian     | the parallel minor
            ii°  | C minor      | C harmonic minor
            bII  | C phrygian   | locrian
            v    | C mixolydian | Cm
            """)
    void sources(String numeral, String nearest, String other) {
        assertExpected("borrowed-source", numeral, "C", nearest);
        assertEquals(
                Grade.REMARK,
                Asked.verdict("borrowed-source", numeral, "C", other).grade());
    }

    /** Numbers as bands write them: common practice, no source; the chords from the tables above. */
    @ParameterizedTest(name = "{1} in {0} is {2}")
    @CsvSource(delimiter = '|', textBlock = """
            D  | 4 1 5 b6 5 1 | G D A Bb A D
            A  | 4 1 5 b6 5 1 | D A E F E A
            F# | 1 6- 4 5     | F# D#m B C#
            Db | 1 b6 b7 1    | Db Bbb Cb Db
            C  | 1 b3 4 4- 1  | C Eb F Fm C
            Gb | 1 3- 4 5 1   | Gb Bbm Cb Db Gb
            """)
    void progressions(String key, String numbers, String names) {
        assertExpected("progression-in-key", numbers, key, names);
        assertExpected("progression-numbers", numbers, key, numbers);
        assertExpected("progression-numbers", names, key, numbers);
        assertEquals(
                Grade.RIGHT,
                Asked.verdict("progression-numbers", names, key, numbers).grade());
    }

    private static void assertExpected(String skill, String subject, String key, String expected) {
        Question question = Asked.question(skill, subject, key);
        assertEquals(expected, question.expected());
        assertEquals(
                Grade.RIGHT,
                question.judge(expected).grade(),
                () -> question.judge(expected).toString());
    }
}
