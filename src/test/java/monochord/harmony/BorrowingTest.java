package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.theory.Scale;
import monochord.theory.Table;
import monochord.theory.Written;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BorrowingTest {
    private static final Key C_MAJOR = Key.parse("C major");

    private static Borrowing.Borrowed borrowed(String numeral, Key key) {
        return Borrowing.borrowed(Numeral.parse(numeral).in(key), key);
    }

    private static String sources(String numeral, Key key) {
        return String.join(
                ", ",
                Borrowing.borrowedFrom(Numeral.parse(numeral).in(key), key).stream()
                        .map(scale -> scale.kind().toString())
                        .toList());
    }

    /** Source: Integrated Music Theory, lesson 16a, CC BY-NC-SA 4.0. */
    @ParameterizedTest(name = "{0} lowers {1}")
    @CsvSource(delimiter = '|', textBlock = """
            iv    | b6    | F Ab C
            iio   | b6    | D F Ab
            iiø7  | b6    | D F Ab C
            viio7 | b6    | B D F Ab
            bVI   | b3 b6 | Ab C Eb
            bVII  | b7    | Bb D F
            bIII  | b3 b7 | Eb G Bb
            v     | b7    | G Bb D
            i     | b3    | C Eb G
            bII   | b2 b6 | Db F Ab
            """)
    void eachBorrowedChordLowersItsDegrees(String numeral, String changed, String inC) {
        Borrowing.Borrowed chord = borrowed(numeral, C_MAJOR);
        assertEquals(inC, Written.words(chord.chord().tones()));
        assertEquals(changed, Written.words(chord.changed()));
        assertEquals(numeral, chord.numeral().toString());
        for (Key key : Key.majorKeys()) {
            assertEquals(changed, Written.words(borrowed(numeral, key).changed()));
        }
    }

    /**
     * Source: which modes hold a chord is arithmetic on the step patterns of Open Music Theory (2014), "scales2", CC BY-SA
     * 4.0; the idea, Integrated Music Theory, lesson 16c. Nearest means by how many degrees the mode changes.
     */
    @ParameterizedTest(name = "{0} comes from {1}")
    @CsvSource(delimiter = '|', textBlock = """
            bVII  | mixolydian, dorian, minor
            v     | mixolydian, dorian, minor
            i     | dorian, minor, phrygian, harmonic minor, melodic minor
            bIII  | dorian, minor, phrygian
            bVI   | minor, phrygian, locrian, harmonic minor
            iv    | minor, phrygian, locrian, harmonic minor
            iio   | minor, harmonic minor
            iiø7  | minor, harmonic minor
            viio7 | harmonic minor
            bII   | phrygian, locrian
            II    | lydian
            vii   | lydian
            '#ivo' | lydian
            I     | ''
            V7    | ''
            III   | ''
            """)
    void aBorrowedChordComesFromTheModesThatHoldIt(String numeral, String modes) {
        for (Key key : Key.majorKeys()) {
            assertEquals(modes, sources(numeral, key));
        }
    }

    /** Source: Open Music Theory (2014), "triads", and Integrated Music Theory, lesson 16a: borrowed in minor. */
    @ParameterizedTest(name = "{0} in minor comes first from {1}")
    @CsvSource({"I, mixolydian", "IV, dorian", "bII, phrygian"})
    void aMinorKeyBorrowsToo(String numeral, String nearest) {
        Key key = Key.parse("A minor");
        assertTrue(
                Borrowing.borrowedFrom(Numeral.parse(numeral).in(key), key).stream()
                        .anyMatch(scale -> scale.kind().toString().equals(nearest)),
                () -> sources(numeral, key));
    }

    /** Source: in the files: the chords that textbooks list as borrowed in a major key. */
    @Test
    void theTableOfAKeyHoldsEveryChordTheBooksList() throws IOException {
        List<String[]> rows = new ArrayList<>(Table.rows("borrowed-triads.csv"));
        rows.addAll(Table.rows("borrowed-sevenths.csv"));
        int seen = 0;
        for (String[] row : rows) {
            Key key = Key.major(NoteName.parse(row[0]));
            Chord chord = Numeral.parse(row[1]).in(key);
            assertTrue(!key.isOwn(chord), chord + " in " + key);
            if (!row[1].equals("ivadd6")) {
                assertTrue(
                        Borrowing.table(key).stream()
                                .anyMatch(each -> each.chord().equals(chord)),
                        chord + " in " + key);
                seen++;
            }
        }
        assertEquals(14 * 15, seen);
    }

    @Test
    void everyRowOfATableIsHeldByItsSourcesAndNotByTheKey() {
        for (Key key : List.of(C_MAJOR, Key.parse("Gb major"), Key.parse("A minor"), Key.parse("D# minor"))) {
            for (Borrowing.Borrowed row : Borrowing.table(key)) {
                assertTrue(!row.sources().isEmpty(), row.chord().toString());
                assertTrue(
                        !row.changed().isEmpty() || key.isMinor(), row.chord().toString());
                assertEquals(row.chord(), row.numeral().in(key));
                for (Scale source : row.sources()) {
                    assertEquals(key.tonic(), source.tonic());
                    assertTrue(row.chord().tones().stream().allMatch(source::holds));
                }
            }
        }
    }
}
