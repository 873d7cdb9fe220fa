package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.text.Phrase;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words of the trade. Source: Open Music Theory (2014 and version 2); examples worked by hand. */
class GlossaryTest {
    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource(delimiter = '|', textBlock = """
            suspension           | C  | A suspension holds a note of the chord before in place of the third, most often the fourth. In C major: G C D over the root G, and then C steps down to the third.
            what is a tritone?   | C  | A tritone is an interval of three whole steps, half of an octave. In C major it lies between F and B, and it wants to close or to open.
            Leading tones        | Eb | The leading note is the seventh degree, a half step below home. In E♭ major it is D, and it leads to E♭.
            modal interchange    | D  | A borrowed chord belongs to another mode on the same tonic, most often to the parallel minor. In D major: B♭ D F, the chord on the lowered sixth, from D minor.
            secondary dominant   | C  | An applied dominant is the dominant of another chord than home, for a moment. In C major: D F♯ A leads to G, the fifth degree.
            relative minor       | A  | Relative keys have the same notes and another home, a minor third apart. That of A major is F♯ minor.
            pedal                | C  | A pedal point is one note held in the bass while the chords above it change. In C major: C in the bass, above it C E G, then F A C.
            walking bass         | Eb | A walking bass plays a note on every beat and steps into the root of the next chord. In E♭ major, up to A♭: E♭ F G A♭.
            comping              | C  | Comping is how the hands strike chords below a tune or a solo, in a rhythm and with gaps left for it. In C major: the bass C on the first beat, the chord C E G short behind it.
            slash chords         | C  | A slash chord names the chord before the slash and the bass behind it. In C major: C E G over the bass E is an inversion.
            half step            | Am | A half step leads to the very next key of the keyboard, black or white. In C major there are two: E to F, and B to C.
            """)
    void tellsAWord(String typed, String key, String told) {
        assertEquals(told, Glossary.explain(typed, Key.parse(key)).orElseThrow().toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "C", "F C G", "what?", "the", "a", "s", "what is it", "dominants everywhere"})
    void leavesEverythingElse(String line) {
        assertEquals(Optional.empty(), Glossary.explain(line, Key.parse("C")));
    }

    @Test
    void tellsEveryWordInEveryKeyInTwoSentences() {
        List<Key> keys = Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .toList();
        for (String word : Glossary.words()) {
            for (Key key : keys) {
                Phrase told = Glossary.explain(word, key).orElseThrow();
                assertFalse(told.isEmpty());
                assertTrue(told.toString().matches("[^.]+\\. [^.]+\\."), told.toString());
            }
        }
    }
}
