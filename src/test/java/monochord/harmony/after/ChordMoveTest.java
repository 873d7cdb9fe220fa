package monochord.harmony.after;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChordMoveTest {
    private static ChordMove move(String from, String to) {
        return new ChordMove(Chord.parse(from), Chord.parse(to));
    }

    /**
     * Source: Integrated Music Theory, lesson 19b, CC BY-NC-SA 4.0: half steps moved in closest position, from C major and
     * between neighbours on the circle; the last five rows counted by hand on the keyboard.
     */
    @ParameterizedTest(name = "{0} to {1} moves {2} half steps")
    @CsvSource({
        "C, Em, 1",
        "C, Am, 2",
        "C, Ab, 2",
        "C, Fm, 2",
        "C, E, 2",
        "C, F, 3",
        "C, G, 3",
        "C, Eb, 3",
        "C, A, 3",
        "C, Abm, 3",
        "C, Ebm, 4",
        "Dm, G, 4",
        "Am, Dm, 3",
        "G, C, 3",
        "C, Bb, 6",
        "C, Dm, 5",
        "C, Bdim, 5",
        "C, Ddim, 4",
        "Gsus4, G, 1"
    })
    void countsTheLeastHalfSteps(String from, String to, int halfSteps) {
        assertEquals(halfSteps, move(from, to).halfSteps());
        assertEquals(halfSteps, move(to, from).halfSteps());
    }

    /** Source: the tones, side by side. */
    @ParameterizedTest(name = "{0} to {1} holds {2}")
    @CsvSource({
        "C, Ab, C",
        "C, Am, C E",
        "Ab, Gsus4, C",
        "Abmaj7, Gsus4, C G",
        "G, Ab, ''",
        "B, Abm, B D#",
        "C, Cmaj7, C E G"
    })
    void holdsTheTonesBothChordsHave(String from, String to, String held) {
        List<NoteName> tones = move(from, to).held();
        assertEquals(
                held, String.join(" ", tones.stream().map(NoteName::toString).toList()));
    }

    /** Source: the circle of fifths and the steps of the scale. */
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            G  | C  | the root falls a fifth
            F  | C  | the root falls a fourth
            Ab | Bb | the root rises a whole step
            Ab | G  | the root falls a half step
            G  | Ab | the root rises a half step
            Bb | Ab | the root falls a whole step
            C  | Ab | the root falls a major third
            C  | Am | the root falls a minor third
            Ab | C  | the root rises a major third
            C  | Cm | the root stays
            F  | B  | the root leaps a tritone
            B  | F  | the root leaps a tritone
            C  | C# | the root slides a half step
            Eb | F# | the root rises an augmented second
            """)
    void saysHowTheRootMoves(String from, String to, String words) {
        assertEquals(words, move(from, to).rootInWords().toString());
    }

    @Test
    void aMoveIsTheSameInEveryKeyAndNoVoiceGoesFurtherThanATritone() {
        int seen = 0;
        for (Key key : Key.majorKeys()) {
            for (Borrowing.Borrowed row : Borrowing.table(key)) {
                ChordMove here = new ChordMove(Borrowing.stacked(key.scale(), 3).get(0), row.chord());
                ChordMove inC = new ChordMove(Chord.parse("C"), row.numeral().in(Key.parse("C")));
                assertEquals(inC.halfSteps(), here.halfSteps(), () -> here.toString());
                assertEquals(inC.held().size(), here.held().size());
                assertEquals(inC.rootInWords(), here.rootInWords());
                assertTrue(here.halfSteps() <= 6 * row.chord().tones().size());
                seen++;
            }
        }
        assertEquals(15 * 19, seen);
    }
}
