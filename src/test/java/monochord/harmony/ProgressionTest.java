package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import monochord.theory.Key;
import monochord.theory.Table;
import monochord.theory.Written;
import monochord.theory.note.Interval;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProgressionTest {
    /** Source: Open Music Theory (2014), "popRockHarmony", CC BY-SA 4.0, for the loops; spellings and numbers are arithmetic. */
    @ParameterizedTest(name = "{1} in {0}")
    @CsvSource(delimiter = '|', textBlock = """
            C major  | I vi IV V          | C Am F G          | 1 6- 4 5
            G major  | I V vi IV          | G D Em C          | 1 5 6- 4
            E major  | bVI bIII bVII IV I | C G D A E         | b6 b3 b7 4 1
            C major  | I bVII IV I        | C Bb F C          | 1 b7 4 1
            C major  | IV iv I            | F Fm C            | 4 4- 1
            D major  | IV I V bVI V I     | G D A Bb A D      | 4 1 5 b6 5 1
            Eb major | I bVI bVII I       | Eb Cb Db Eb       | 1 b6 b7 1
            A minor  | i VII VI V         | Am G F E          | 1- 7 6 5
            C major  | vi IV I V          | Am F C G          | 6- 4 1 5
            Bb major | ii7 V7 Imaj7       | Cm7 F7 Bbmaj7     | 2-7 57 1maj7
            """)
    void numeralsSymbolsAndNumbersAreOneProgression(String key, String numerals, String symbols, String numbers) {
        Key in = Key.parse(key);
        for (String text : List.of(numerals, symbols, numbers)) {
            Progression progression = Progression.parse(text, in);
            assertEquals(symbols, progression.symbols(Signs.ASCII));
            assertEquals(numerals, progression.numerals(Signs.ASCII));
            assertEquals(numbers, progression.numbers(Signs.ASCII));
        }
    }

    /** Source: our own text form. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = ';', textBlock = """
            F C | G . Ab | % |    ; F C | G . Ab | % | ; 2 3 3
            C | . | F C           ; C | . | F C |      ; 1 1 2
            C . F                 ; C . F              ; 1 1 1
            C - F - G             ; C F G              ; 1 1 1
            | C | F |             ; C | F |            ; 1 1
            Am (E) F              ; Am E F             ; 1 1 1
            Fmaj7 (add 2) G       ; Fmaj9 G            ; 1 1
            I (bVI) V7 (no5)      ; C Ab G7(no5)       ; 1 1 1
            """)
    void barsHoldsAndRepeatsAreRead(String text, String written, String shares) {
        Progression progression = Progression.parse(text, Key.parse("C"));
        assertEquals(written, progression.toString());
        assertEquals(
                shares,
                Written.words(progression.bars().stream().map(Bar::shares).toList()));
        assertEquals(progression, Progression.parse(progression.toString(), Key.parse("C")));
    }

    /** Every example of the textbooks that stays in one key, moved through all keys. */
    @Test
    void movingAProgressionMovesEveryChordAlike() throws IOException {
        int seen = 0;
        for (String[] row : Table.rows("worked-examples.csv")) {
            if (row[3].indexOf(':') == row[3].lastIndexOf(':') && row[3].startsWith("C: ")) {
                Progression progression = Progression.parse(row[3].substring(3), Key.parse("C"));
                for (Key key : Key.majorKeys()) {
                    assertMoved(
                            progression,
                            progression.in(key),
                            Key.parse("C").tonic().to(key.tonic()));
                }
                seen++;
            }
        }
        assertTrue(seen > 40, "only " + seen);
    }

    private static void assertMoved(Progression from, Progression to, Interval by) {
        assertEquals(from.chords().stream().map(chord -> chord.plus(by)).toList(), to.chords());
        assertEquals(from.numerals(Signs.ASCII), to.numerals(Signs.ASCII));
        assertEquals(from.numbers(Signs.ASCII), to.numbers(Signs.ASCII));
        assertEquals(
                to.chords(),
                Progression.parse(to.numerals(Signs.ASCII), to.key()).chords());
        assertEquals(
                to.chords(),
                Progression.parse(to.symbols(Signs.ASCII), to.key()).chords());
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = ';', textBlock = """
            ''      ; 0 ; "" is not a progression: expected a chord at character 1, found the end. Example: IV I | V . bVI | V I
            . C     ; 0 ; ". C" is not a progression: expected a chord before the hold at character 1, found '.'. Example: IV I | V . bVI | V I
            % C     ; 0 ; "% C" is not a progression: expected a bar before the repeat at character 1, found '%'. Example: IV I | V . bVI | V I
            C F Gq  ; 5 ; "Gq" is not a chord: expected b5, #9, add9, sus4, no5, /bass at character 2, found 'q'. Example: Abmaj7
            """)
    void whatCannotBeReadIsRefusedAtItsPlace(String text, int place, String message) {
        Unreadable unreadable = assertThrows(Unreadable.class, () -> Progression.parse(text, Key.parse("C")));
        assertEquals(message, unreadable.getMessage());
        assertEquals(place, unreadable.place());
        assertEquals(text, unreadable.text());
    }

    @Test
    void symbolsAreWrittenWithTheSignsOfPrintedMusic() {
        Progression progression = Progression.parse("bVImaj7 viio7/V", Key.parse("Eb"));
        assertEquals("C♭maj7 Adim7", progression.symbols(Signs.MUSIC));
        assertEquals("♭VImaj7 vii°7/V", progression.numerals(Signs.MUSIC));
        assertEquals(
                List.of("Cb", "A"),
                progression.chords().stream()
                        .map(chord -> chord.root().toString())
                        .collect(Collectors.toList()));
    }
}
