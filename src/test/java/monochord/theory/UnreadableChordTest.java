package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.Function;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a chord, a numeral or a number that cannot be read: text | place from 0 | whole message. */
class UnreadableChordTest {
    private static void refused(Function<String, ?> parse, String text, int place, String message) {
        Unreadable unreadable = assertThrows(Unreadable.class, () -> parse.apply(text));
        assertEquals(message, unreadable.getMessage());
        assertEquals(place, unreadable.place());
        assertEquals(text, unreadable.text());
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a chord: expected a letter from A to G at character 1, found the end. Example: Abmaj7
            H7 | 0 | "H7" is not a chord: expected a letter from A to G at character 1, found 'H'. Example: Abmaj7
            Cb#7 | 2 | "Cb#7" is not a chord: expected one kind of accidental at character 3, found '#'. Example: Abmaj7
            Cq | 1 | "Cq" is not a chord: expected b5, #9, add9, sus4, no5, /bass at character 2, found 'q'. Example: Abmaj7
            C7b | 3 | "C7b" is not a chord: expected 5, 9, 11 or 13 at character 4, found the end. Example: Abmaj7
            C7#7 | 3 | "C7#7" is not a chord: expected 5, 9 or 11 at character 4, found '7'. Example: Abmaj7
            C7b11 | 3 | "C7b11" is not a chord: expected 5, 9 or 13 at character 4, found '1'. Example: Abmaj7
            C7(b9 | 5 | "C7(b9" is not a chord: expected a closing bracket at character 6, found the end. Example: Abmaj7
            C7) | 2 | "C7)" is not a chord: expected b5, #9, add9, sus4, no5, /bass at character 3, found ')'. Example: Abmaj7
            Cadd3 | 4 | "Cadd3" is not a chord: expected 2, 4, 6, 9, 11 or 13 at character 5, found '3'. Example: Abmaj7
            Cadd | 4 | "Cadd" is not a chord: expected 2, 4, 6, 9, 11 or 13 at character 5, found the end. Example: Abmaj7
            Csus5 | 4 | "Csus5" is not a chord: expected 2, 4, 7, 9 or 13 at character 5, found '5'. Example: Abmaj7
            Cno7 | 3 | "Cno7" is not a chord: expected 3, 5, 9 or 11 at character 4, found '7'. Example: Abmaj7
            C/H | 2 | "C/H" is not a chord: expected a bass note from A to G at character 3, found 'H'. Example: Abmaj7
            C/ | 2 | "C/" is not a chord: expected a bass note from A to G at character 3, found the end. Example: Abmaj7
            C/E/G | 2 | "C/E/G" is not a chord: a chord has one bass note. Example: Abmaj7
            Cm/maj | 6 | "Cm/maj" is not a chord: expected 7 at character 7, found the end. Example: Abmaj7
            Cno3no5 | 7 | "Cno3no5" is not a chord: these tones make no chord that has a symbol. Example: Abmaj7
            """)
    void chords(String text, int place, String message) {
        refused(Chord::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            q | 0 | "q" is not a kind of chord: expected b5, #9, add9, sus4, no5, /bass at character 1, found 'q'. Example: m7b5
            m7b5x | 4 | "m7b5x" is not a kind of chord: expected b5, #9, add9, sus4, no5, /bass at character 5, found 'x'. Example: m7b5
            ( | 1 | "(" is not a kind of chord: expected a closing bracket at character 2, found the end. Example: m7b5
            add3 | 3 | "add3" is not a kind of chord: expected 2, 4, 6, 9, 11 or 13 at character 4, found '3'. Example: m7b5
            """)
    void kindsOfChord(String text, int place, String message) {
        refused(ChordKind::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a numeral: expected I to VII or i to vii at character 1, found the end. Example: bVImaj7
            Q | 0 | "Q" is not a numeral: expected I to VII or i to vii at character 1, found 'Q'. Example: bVImaj7
            b | 1 | "b" is not a numeral: expected I to VII or i to vii at character 2, found the end. Example: bVImaj7
            b#VI | 1 | "b#VI" is not a numeral: expected one kind of accidental at character 2, found '#'. Example: bVImaj7
            bbbVI | 0 | "bbbVI" is not a numeral: at most two accidentals stand before a numeral. Example: bVImaj7
            VIII | 3 | "VIII" is not a numeral: expected o, ø, +, a figure (6, 64, 7 …), a suffix (maj7, sus4 …), / at character 4, found 'I'. Example: bVImaj7
            vq | 1 | "vq" is not a numeral: expected o, ø, +, a figure (6, 64, 7 …), a suffix (maj7, sus4 …), / at character 2, found 'q'. Example: bVImaj7
            V65x | 3 | "V65x" is not a numeral: expected o, ø, +, a figure (6, 64, 7 …), a suffix (maj7, sus4 …), / at character 4, found 'x'. Example: bVImaj7
            VIo | 2 | "VIo" is not a numeral: a diminished chord is written in small letters. Example: bVImaj7
            V7/ | 3 | "V7/" is not a numeral: expected I to VII or i to vii at character 4, found the end. Example: bVImaj7
            V7/q | 3 | "V7/q" is not a numeral: expected I to VII or i to vii at character 4, found 'q'. Example: bVImaj7
            V/V/V/V/V | 8 | "V/V/V/V/V" is not a numeral: at most 3 targets are read. Example: bVImaj7
            N7 | 1 | "N7" is not a numeral: expected / or the end at character 2, found '7'. Example: bVImaj7
            It5 | 2 | "It5" is not a numeral: expected / or the end at character 3, found '5'. Example: bVImaj7
            Cad7 | 3 | "Cad7" is not a numeral: expected / or the end at character 4, found '7'. Example: bVImaj7
            """)
    void numerals(String text, int place, String message) {
        refused(Numeral::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a chord number: expected a number from 1 to 7 at character 1, found the end. Example: b6maj7
            8 | 0 | "8" is not a chord number: expected a number from 1 to 7 at character 1, found '8'. Example: b6maj7
            b | 1 | "b" is not a chord number: expected a number from 1 to 7 at character 2, found the end. Example: b6maj7
            '#b6' | 1 | "#b6" is not a chord number: expected one kind of accidental at character 2, found 'b'. Example: b6maj7
            6q | 1 | "6q" is not a chord number: expected -, 7, maj7, sus4 or another suffix, / at character 2, found 'q'. Example: b6maj7
            4sus8 | 4 | "4sus8" is not a chord number: expected -, 7, maj7, sus4 or another suffix, / at character 5, found '8'. Example: b6maj7
            1/8 | 2 | "8" is not a degree: expected a number from 1 to 7 at character 1, found '8'. Example: b6
            """)
    void numbers(String text, int place, String message) {
        refused(each -> BandNumber.parse(each, Key.major(NoteName.C)), text, place, message);
    }
}
