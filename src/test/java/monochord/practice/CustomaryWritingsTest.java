package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

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
        assertEquals(message, verdict.message());
        assertEquals(grade, verdict.grade().toString());
    }
}
