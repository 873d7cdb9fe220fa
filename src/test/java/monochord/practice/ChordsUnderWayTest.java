package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chords moved to another key, and the next chord. */
class ChordsUnderWayTest {
    /** Source: the distance counted along the line of fifths by hand; Integrated Music Theory, lesson 12a, for B♭ and E♭. */
    @ParameterizedTest(name = "{1} from {0}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C  | F C G to Eb          | Ab Eb Bb
            C  | C Am F G to D        | D Bm G A
            C  | F C G Ab to A        | D A E F
            Bb | Bb Gm Eb F to G      | G Em C D
            D  | D A Bb to Ab         | Ab Eb Fb
            E  | E C#m F#m7 B7 to F   | F Dm Gm7 C7
            C  | "F C G" from G to D  | C G D
            Am | Am F G to Cm         | Cm Ab Bb
            C  | C/E F to Eb          | Eb/G Ab
            """)
    void movesARow(String key, String subject, String chords) {
        Question question = Asked.question("transposition", subject, key);
        assertEquals(chords, question.expected());
        assertEquals(Grade.RIGHT, question.judge(chords).grade());
    }

    /** Source: the wrong direction, Integrated Music Theory, lesson 12a; the others common teaching experience, no source. */
    @ParameterizedTest(name = "{0}: {1} comes from {2}")
    @CsvSource(delimiter = '|', textBlock = """
            F C G to Eb     | D A E       | wrong-way
            F C G to Eb     | A E B       | letters-only
            F C G to Eb     | F C G       | wrong-key
            F C G to Eb     | G D A       | wrong-key
            F C Am to D     | G D B       | quality-of-the-key
            F C G to Eb     | G# D# A#    | spelled-by-sound
            F C G to Eb     | Ab Eb Bbm   | wrong-quality
            F C G to Eb     | Ab Eb C     | wrong-degree
            """)
    void mistakes(String subject, String answer, String misconception) {
        Verdict verdict = Asked.verdict("transposition", subject, "C", answer);
        assertEquals(misconception, verdict.misconception(), verdict::toString);
    }

    /**
     * Sources: Open Music Theory (2014), "popRockHarmony", "modalMixture", "cadenceTypes", and Integrated Music Theory,
     * lessons 11b and 16a, for the ways on; that a chord from the key without a pull can be done is common practice.
     */
    @ParameterizedTest(name = "after {0} in {1}, {2} is {3}, {4}")
    @CsvSource(delimiter = '|', textBlock = """
            bVI  | C  | Bb     | right  | null
            bVI  | C  | bVII   | right  | null
            bVI  | C  | Bb D F | right  | null
            bVI  | C  | G      | right  | null
            bVI  | C  | G7     | right  | null
            bVI  | C  | Gsus4  | right  | null
            bVI  | C  | C      | right  | null
            bVI  | C  | C/G    | right  | null
            bVI  | C  | Eb     | right  | null
            bVII | C  | F      | right  | null
            V    | C  | Ab     | right  | null
            V    | C  | Am7    | right  | null
            V7/V | C  | G      | right  | null
            bVI  | C  | Dm     | remark | null
            bVI  | C  | Ab     | wrong  | stood-still
            bVI  | C  | Abmaj7 | wrong  | stood-still
            bVI  | C  | C#m    | wrong  | wrong-key
            V    | D  | G#     | wrong  | wrong-key
            bVI  | C  | H      | unreadable | null
            bVI  | C  | ''     | unreadable | null
            """)
    void judgesByRules(String from, String key, String answer, String grade, String misconception) {
        Verdict verdict = Asked.verdict("next-chord", from, key, answer);
        assertEquals(grade, verdict.grade().toString(), verdict::toString);
        assertEquals(misconception, String.valueOf(verdict.misconception()));
    }

    @Test
    void saysWhyItLeadsOn() {
        assertEquals(
                "Yes, G, V. The root sinks a half step onto the dominant.",
                Asked.verdict("next-chord", "bVI", "C", "G").message().toString());
        assertEquals(
                "C♯m belongs neither to C major nor to a scale on the same tonic. Ask which tone of A♭ "
                        + "wants to move, and where its root would fall.",
                Asked.verdict("next-chord", "bVI", "C", "C#m").message().toString());
        assertTrue(Asked.question("next-chord", "bVI", "C")
                .derivation()
                .toString()
                .startsWith("There are several: B♭ (it stays borrowed: the walk up ♭VI ♭VII I), "));
    }
}
