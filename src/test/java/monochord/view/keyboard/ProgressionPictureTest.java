package monochord.view.keyboard;

import static monochord.view.keyboard.KeyboardPictureTest.assertPicture;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Reader;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;

class ProgressionPictureTest {
    private static final List<String> WALTZ =
            List.of("F A3 C4 F4", "C G3 C4 E4", "G G3 B3 D4", "Ab Ab3 C4 Eb4", "G G3 B3 D4", "C G3 C4 E4");

    @Test
    void tonesThatTwoChordsShareStandInOneColumn() {
        assertPicture(ProgressionPicture.of(rows(WALTZ), Reader.ENGLISH, 80), """
                             ██   ██   ██        ██   ██        ██   ██   ██
                         ──F────G────A────B────C────D────E────F────G────A────B──
                IV   F               A         C              F
                I    C          G              C         E
                V    G          G         B         D
                ♭VI  A♭           A♭           C      E♭
                V    G          G         B         D
                I    C          G              C         E
                """);
    }

    @Test
    void fortyColumnsHoldTheSameGrid() {
        assertPicture(ProgressionPicture.of(rows(WALTZ), Reader.of(Signs.ASCII), 40), """
                      [] [] []    [] []    [] [] []
                    -F--G--A--B--C--D--E--F--G--A--B-
                F          A     C        F
                C       G        C     E
                G       G     B     D
                Ab       Ab      C   Eb
                G       G     B     D
                C       G        C     E
                """);
    }

    @Test
    void neighboursAHalfStepApartDoNotTouch() {
        StyledText grid = ProgressionPicture.of(rows(List.of("Bmaj7 A#3 B3 D#4 F#4")), Reader.ENGLISH, 40);
        assertTrue(grid.plain().contains(" A♯ B "), grid.plain());
    }

    @Test
    void inWordsEachChordSaysWhatStays() {
        assertPicture(KeyboardWords.progression(rows(WALTZ.subList(0, 4)), Reader.ENGLISH, 80), """
                F, IV: A C F.
                C, I: G C E. C stays.
                G, V: G B D. G stays.
                A♭, ♭VI: A♭ C E♭.
                """);
    }

    @Test
    void everyGridFitsItsWidth() {
        for (int width = 20; width <= 100; width++) {
            for (Signs signs : Signs.values()) {
                StyledText grid = ProgressionPicture.of(rows(WALTZ), Reader.of(signs), width);
                assertTrue(grid.columns() <= Math.min(80, width), grid.plain());
                assertTrue(grid.plain().lines().noneMatch(line -> line.endsWith(" ")), grid.plain());
            }
        }
    }

    private static List<ChordOnKeys> rows(List<String> chords) {
        Key key = Key.parse("C major");
        List<ChordOnKeys> rows = new ArrayList<>();
        for (String row : chords) {
            Chord chord = Chord.parse(row.substring(0, row.indexOf(' ')));
            rows.add(new ChordOnKeys(
                    Numeral.of(chord, key), chord, KeyboardPictureTest.pitches(row.substring(row.indexOf(' ') + 1))));
        }
        return rows;
    }
}
