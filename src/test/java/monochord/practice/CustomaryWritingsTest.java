package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What books write differently is accepted, and where it is not the writing that is asked for, with a remark.
 *
 * <p>Sources: I7 for the seventh chord of the key, Open Music Theory (2014) and RomanText (Tymoczko et al., ISMIR 2019);
 * IM7, the DCML annotation standard 2.3.0; Cad64 beside I64 and V6/4-5/3, and N6 beside ♭II6, RomanText and Open Music
 * Theory; VII and ♭VII in minor, "2" chords and the triangle: common practice, no source.
 */
class CustomaryWritingsTest {
    @ParameterizedTest(name = "{0} of {1} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            chord-degree     | bII6   | C       | N6        | remark | Yes, N6 is another name for it. By its degree it is ♭II6.
            chord-degree     | bII6   | C       | bII6      | right  | Yes: in C major D♭/F is ♭II6.
            chord-degree     | Cmaj7  | C       | I7        | remark | Yes. Some write I7 and leave the seventh to the key; Imaj7 says that it is the major one.
            chord-degree     | Fmaj7  | C       | IV7       | remark | Yes. Some write IV7 and leave the seventh to the key; IVmaj7 says that it is the major one.
            chord-degree     | Cmaj7  | C       | IM7       | right  | Yes: in C major Cmaj7 is Imaj7.
            chord-degree     | Cmaj7  | C       | Imaj7     | right  | Yes: in C major Cmaj7 is Imaj7.
            chord-degree     | C7     | C       | I7        | right  | Yes: in C major C7 is I7.
            chord-degree     | G      | A minor | VII       | right  | Yes: in A minor G is VII.
            chord-degree     | G      | A minor | bVII      | remark | Yes, ♭VII is another name for it. By its degree it is VII.
            chord-degree     | F      | A minor | bVI       | remark | Yes, ♭VI is another name for it. By its degree it is VI.
            chord-degree     | C      | A minor | bIII      | remark | Yes, ♭III is another name for it. By its degree it is III.
            chord-degree     | C/G    | C       | I64       | right  | Yes: in C major C/G is I64.
            chord-degree     | C/G    | C       | Cad64     | remark | Yes, Cad64 is another name for it. By its degree it is I64.
            chord-degree     | C/G    | C       | V6/4-5/3  | remark | Yes, Cad64 is another name for it. By its degree it is I64.
            borrowed-chord   | N6     | C       | Db/F      | right  | Yes: D♭/F, which is D♭ F A♭.
            added-tone       | 2      | C       | C E G D   | right  | Yes: C E G D.
            added-tone       | 2      | C       | C D G     | remark | C2 is played so too, without the third. Most players keep it: C E G D.
            seventh-spelling | CΔ     | C       | C E G B   | right  | Yes: C E G B.
            degree-chord     | 7      | A minor | G#dim     | remark | Yes, G♯dim stands there too when the seventh of the minor scale is moved. Here I had G in mind.
            degree-chord     | 5      | A minor | Em        | remark | Yes, Em stands there too when the seventh of the minor scale is moved. Here I had E in mind.
            """)
    void accepted(String skill, String subject, String key, String answer, String grade, String message) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(message, verdict.message().toString());
        assertEquals(grade, verdict.grade().toString());
    }

    @ParameterizedTest(name = "{0} of {1} in {2}: {3} is right with a remark")
    @DisplayName("Other customary ways are right with a remark")
    @CsvSource(delimiter = '|', textBlock = """
            chord-degree   | Db    | C       | N
            chord-degree   | Db    | C       | N6
            chord-degree   | Cmaj7 | C       | I7
            chord-degree   | Bb    | C minor | bVII
            chord-degree   | Ab    | C minor | bVI
            borrowed-chord | bII   | C       | F Ab Db
            borrowed-chord | bVI   | C       | Ab/C
            borrowed-chord | bVI   | C       | C Eb Ab
            degree-chord   | 5     | A minor | Em
            degree-chord   | 7     | A minor | G#dim
            degree-quality | 5     | A minor | minor
            degree-quality | 7     | A minor | diminished
            key-signature  | major | A       | C# F# G#
            scale-spelling | major | C       | C B A G F E D C
            scale-spelling | major | C       | G A B C D E F
            triad-spelling | minor | C       | G Eb C
            """)
    void customaryAlternatives(String skill, String subject, String key, String answer) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(Grade.REMARK, verdict.grade(), verdict::toString);
    }

    @ParameterizedTest(name = "{0} of {1} in {2} reads \"{3}\"")
    @DisplayName("Any customary writing is read")
    @CsvSource(delimiter = '|', textBlock = """
            borrowed-chord | bVI | D | Bb D F
            borrowed-chord | bVI | D | b♭, d, f
            borrowed-chord | bVI | D | B flat D F
            borrowed-chord | bVI | D | bb-d-f
            borrowed-chord | bVI | D | B♭/D/F
            borrowed-chord | bVI | D | Bb, D and F
            borrowed-chord | bVI | D | Bb3 D4 F4
            borrowed-chord | bVI | D | BbDF
            borrowed-chord | bVI | D | bb
            borrowed-chord | bVI | D | B flat
            borrowed-chord | bVI | D | B flat major
            borrowed-chord | bVI | D | Bbmaj
            borrowed-chord | bVI | D | the B♭ chord
            degree-chord   | 7   | C | B D F
            degree-chord   | 7   | C | B diminished
            degree-chord   | 7   | C | b°
            degree-chord   | 6   | C | A-
            degree-chord   | 6   | C | a minor triad
            chord-degree   | 6   | G | vi
            chord-degree   | 6   | G | 6
            chord-degree   | 6   | G | 6-
            chord-degree   | 6   | G | 6m
            chord-degree   | 6   | G | the sixth degree
            chord-degree   | 6   | G | six minor
            chord-degree   | Eb  | G | flat six
            chord-degree   | Eb  | G | ♭VI
            chord-degree   | Eb  | G | the lowered sixth
            chord-degree   | 7   | G | vii°
            chord-degree   | 7   | G | 7dim
            degree-quality | 6   | G | Em
            interval       | F# G | C | min 2nd
            interval       | C E  | C | a major third
            interval       | C E  | C | maj3
            interval       | C G  | C | perfect 5th
            interval       | M3   | C | E4
            key-signature  |     | D | two sharps
            key-signature  |     | D | 2#
            key-signature  |     | D | F# and C#
            key-signature  |     | D | F sharp, C sharp
            key-signature  |     | C | no sharps, no flats
            lowered-degree | b7  | C | B-flat
            progression-in-key  | 4 1 5 b6 | C | F – C – G – Ab
            progression-numbers | 4 1 5 b6 | C | 4-1-5-b6
            progression-numbers | 4 1 5 b6 | C | IV I V bVI
            progression-numbers | 4 1 5 b6 | C | 4 1 5 flat 6
            """)
    void writings(String skill, String subject, String key, String answer) {
        Verdict verdict = Asked.verdict(skill, subject == null ? "" : subject, key, answer);
        assertEquals(Grade.RIGHT, verdict.grade(), verdict::toString);
    }
}
