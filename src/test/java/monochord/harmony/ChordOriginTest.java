package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.stream.IntStream;
import monochord.theory.Chord;
import monochord.theory.ChordKind;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a chord comes from, in words. Source: Open Music Theory (version 2), "Substitutions"; what lies in no mode is arithmetic. */
class ChordOriginTest {
    private static final List<String> KINDS = List.of(
            "", "m", "dim", "aug", "sus4", "sus2", "6", "m6", "6/9", "add9", "7", "maj7", "m7", "m7b5", "dim7",
            "m(maj7)", "7sus4", "9", "maj9", "m9", "11", "13", "7b5", "7#5", "7b9", "7#9", "7#11", "7b13", "maj7#11",
            "maj7#5");

    private static String origin(String symbol, Key key) {
        Chord chord = Chord.parse(symbol);
        return ChordOrigin.of(chord, Numeral.of(chord, key), key).toString();
    }

    @ParameterizedTest(name = "{0} in C: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            F     | one of the key's own chords
            D7    | its goal is G
            Bb7   | the backdoor dominant, up a whole step to C; borrowed from C minor
            Bb7b9 | the backdoor dominant, up a whole step to C
            Fm    | borrowed from C minor (also phrygian, locrian, harmonic minor)
            """)
    void saysWhereItComesFrom(String symbol, String words) {
        assertEquals(words, origin(symbol, Key.parse("C")));
    }

    @Test
    @DisplayName("something is said of every kind of chord on every root, in major and in minor")
    void saysSomethingOfEveryChord() {
        for (String key : List.of("C", "C minor")) {
            for (String kind : KINDS) {
                IntStream.rangeClosed(-10, 10)
                        .mapToObj(NoteName::new)
                        .map(root -> new Chord(root, ChordKind.parse(kind)))
                        .forEach(chord -> assertFalse(
                                origin(chord.toString(), Key.parse(key)).isEmpty()));
            }
        }
    }
}
