package monochord.harmony.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import monochord.harmony.Progression;
import monochord.theory.Key;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One idiom asked for by name, as the books have it. Sources: Open Music Theory (2014), "appliedChords",
 * "alteredSubdominants"; its second edition (2021 to 2023), "Substitutions" and "Embellishing chords";
 * Integrated Music Theory, 9b, 14c, 16a and 18b. Backdoor and line: common practice, no source.
 */
class AskedIdiomTest {
    private static String with(String idiom, String row, String key, String at) {
        OptionalInt place = at == null ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(at) - 1);
        return AskedIdiom.parse(idiom)
                .in(Progression.parse(row, Key.parse(key)), Optional.empty(), place)
                .map(idea -> idea.progression().chords().stream()
                        .map(Object::toString)
                        .collect(Collectors.joining(" ")))
                .orElse("nowhere");
    }

    @ParameterizedTest(name = "{1} in {2} with {0} at {3}: {4}")
    @CsvSource(delimiter = '|', textBlock = """
            borrowed iv            | C F G C       | C  | 2 | C Fm G C
            borrowed iv            | C F G C       | C  |   | C Fm G C
            borrowed bVImaj7       | C G Am F      | C  |   | C G Abmaj7 F
            borrowed bVI           | D A Bm G      | D  | 3 | D A Bb G
            applied                | C Am Dm G C   | C  | 2 | C A7 Dm G C
            applied                | C F G C       | C  | 2 | C C7 F G C
            applied                | C Am F G C    | C  | 3 | C Am C7 F G C
            two-five               | C Am          | C  |   | C Bm7b5 E7 Am
            two five               | C G7 C        | C  | 2 | C Dm7 G7 C
            tritone                | Dm7 G7 Cmaj7  | C  |   | Dm7 Db7 Cmaj7
            tritone                | Eb A7 Dm      | Dm |   | Eb Eb7 Dm
            backdoor               | C F C         | C  | 3 | C F Bb7 C
            backdoor               | C F C         | C  | 2 | C Fm Bb7 C
            passing diminished     | C Dm G C      | C  |   | C C#dim7 Dm G C
            passing diminished     | A D E A       | A  |   | A D D#dim7 E A
            common-tone diminished | C C G C       | C  | 2 | C D#dim7/C C G C
            suspended              | C F G C       | C  | 3 | C F G7sus4 G C
            suspended              | C F G C       | C  | 2 | C Fsus4 F G C
            line cliché            | Am Dm E Am    | Am | 1 | Am Am(maj7) Am7 Am6 Dm E Am
            line cliche            | C F G C       | C  | 1 | C Cmaj7 C7 F G C
            pedal on 1             | C F G C       | C  |   | C F/C G/C C
            pedal on 5             | C Am F G      | C  | 3 | C Am F/G G
            neapolitan             | Am Dm E Am    | Am | 2 | Am Bb/D E Am
            mediant                | C Em F G      | C  |   | C E F G
            walk up                | C F G C       | C  |   | C Ab Bb C
            double plagal          | C G F C       | C  |   | C Bb F C
            applied                | C F Bdim C    | C  | 3 | nowhere
            tritone                | C F G C       | C  | 2 | nowhere
            passing diminished     | C G C         | C  |   | nowhere
            """)
    void putsIt(String idiom, String row, String key, String at, String expected) {
        assertEquals(expected, with(idiom, row, key, at));
    }

    @Test
    void saysWhatItCannotRead() {
        assertEquals(
                "\"shine\" is not an idiom: expected borrowed and a numeral, or walk up, double plagal, neapolitan,"
                        + " applied, two-five, tritone, backdoor, flat nine, passing diminished, common-tone diminished,"
                        + " line cliche, pedal on 1, pedal on 5, chromatic descent, stepping bass, mediant, suspended,"
                        + " added tone. Example: borrowed bVI",
                assertThrows(Unreadable.class, () -> AskedIdiom.parse("shine")).getMessage());
        assertThrows(Unreadable.class, () -> AskedIdiom.parse("borrowed X"));
        assertTrue(AskedIdiom.names().contains("line cliche"));
    }
}
