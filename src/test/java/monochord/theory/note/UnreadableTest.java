package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.Function;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Scale;
import monochord.theory.ScaleKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a text that cannot be read: text | place from 0 | whole message. */
class UnreadableTest {
    private static void refused(Function<String, ?> parse, String text, int place, String message) {
        Unreadable unreadable = assertThrows(Unreadable.class, () -> parse.apply(text));
        assertEquals(message, unreadable.getMessage());
        assertEquals(place, unreadable.place());
        assertEquals(text, unreadable.text());
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a note name: expected a letter from A to G at character 1, found the end. Example: Eb
            H | 0 | "H" is not a note name: expected a letter from A to G at character 1, found 'H'. Example: Eb
            é | 0 | "é" is not a note name: expected a letter from A to G at character 1, found 'é'. Example: Eb
            4 | 0 | "4" is not a note name: expected a letter from A to G at character 1, found '4'. Example: Eb
            𝄪 | 0 | "𝄪" is not a note name: expected a letter from A to G at character 1, found '𝄪'. Example: Eb
            Eq | 1 | "Eq" is not a note name: expected b, bb, #, x or the end at character 2, found 'q'. Example: Eb
            C4 | 1 | "C4" is not a note name: expected b, bb, #, x or the end at character 2, found '4'. Example: Eb
            C b | 1 | "C b" is not a note name: expected b, bb, #, x or the end at character 2, found ' '. Example: Eb
            Cb# | 2 | "Cb#" is not a note name: expected one kind of accidental at character 3, found '#'. Example: Eb
            C#b | 2 | "C#b" is not a note name: expected one kind of accidental at character 3, found 'b'. Example: Eb
            Ebbbbbbbbbbbbbb | 14 | "Ebbbbbbbbbbbbbb" is not a note name: expected fewer accidentals at character 15, found 'b'. Example: Eb
            B############## | 14 | "B##############" is not a note name: expected fewer accidentals at character 15, found '#'. Example: Eb
            """)
    void noteNames(String text, int place, String message) {
        refused(NoteName::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a pitch: expected a letter from A to G at character 1, found the end. Example: Ab3
            H4 | 0 | "H4" is not a pitch: expected a letter from A to G at character 1, found 'H'. Example: Ab3
            4 | 0 | "4" is not a pitch: expected a letter from A to G at character 1, found '4'. Example: Ab3
            C | 1 | "C" is not a pitch: expected an octave from -1 to 10 at character 2, found the end. Example: Ab3
            Ab | 2 | "Ab" is not a pitch: expected an octave from -1 to 10 at character 3, found the end. Example: Ab3
            C- | 2 | "C-" is not a pitch: expected an octave from -1 to 10 at character 3, found the end. Example: Ab3
            Cb#4 | 2 | "Cb#4" is not a pitch: expected one kind of accidental at character 3, found '#'. Example: Ab3
            C4x | 2 | "C4x" is not a pitch: expected the end at character 3, found 'x'. Example: Ab3
            C004 | 3 | "C004" is not a pitch: expected the end at character 4, found '4'. Example: Ab3
            C11 | 1 | "C11" is not a pitch: the octave must be from -1 to 10. Example: Ab3
            C-2 | 1 | "C-2" is not a pitch: the octave must be from -1 to 10. Example: Ab3
            Ab99 | 2 | "Ab99" is not a pitch: the octave must be from -1 to 10. Example: Ab3
            """)
    void pitches(String text, int place, String message) {
        refused(Pitch::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not an interval: expected P, M, m, A or d at character 1, found the end. Example: m3
            3 | 0 | "3" is not an interval: expected P, M, m, A or d at character 1, found '3'. Example: m3
            x4 | 0 | "x4" is not an interval: expected P, M, m, A or d at character 1, found 'x'. Example: m3
            third | 0 | "third" is not an interval: expected P, M, m, A or d at character 1, found 't'. Example: m3
            m | 1 | "m" is not an interval: expected a number from 1 at character 2, found the end. Example: m3
            AA | 2 | "AA" is not an interval: expected a number from 1 at character 3, found the end. Example: m3
            m3x | 2 | "m3x" is not an interval: expected the end at character 3, found 'x'. Example: m3
            m100 | 3 | "m100" is not an interval: expected the end at character 4, found '0'. Example: m3
            M0 | 1 | "M0" is not an interval: the number must be from 1 to 99. Example: m3
            m5 | 1 | "m5" is not an interval: a fifth is perfect, augmented or diminished. Example: m3
            P3 | 1 | "P3" is not an interval: a third is major, minor, augmented or diminished. Example: m3
            dm3 | 2 | "dm3" is not an interval: a third is major, minor, augmented or diminished. Example: m3
            d1 | 1 | "d1" is not an interval: a unison is perfect, augmented or diminished. Example: m3
            -M11 | 2 | "-M11" is not an interval: an eleventh is perfect, augmented or diminished. Example: m3
            """)
    void intervals(String text, int place, String message) {
        refused(Interval::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            major fourth | 0 | "major fourth" is not an interval: a fourth is perfect, augmented or diminished. Example: minor third
            perfect third | 0 | "perfect third" is not an interval: a third is major, minor, augmented or diminished. Example: minor third
            minor octave | 0 | "minor octave" is not an interval: an octave is perfect, augmented or diminished. Example: minor third
            doubly minor third | 0 | "doubly minor third" is not an interval: expected a quality and a number. Example: minor third
            very big third | 0 | "very big third" is not an interval: expected a quality and a number. Example: minor third
            m 3 | 0 | "m 3" is not an interval: expected a quality and a number. Example: minor third
            """)
    void intervalsInWords(String text, int place, String message) {
        refused(Interval::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a degree: expected a number from 1 to 7 at character 1, found the end. Example: b6
            8 | 0 | "8" is not a degree: expected a number from 1 to 7 at character 1, found '8'. Example: b6
            0 | 0 | "0" is not a degree: expected a number from 1 to 7 at character 1, found '0'. Example: b6
            b | 1 | "b" is not a degree: expected a number from 1 to 7 at character 2, found the end. Example: b6
            b8 | 1 | "b8" is not a degree: expected a number from 1 to 7 at character 2, found '8'. Example: b6
            '#b6' | 1 | "#b6" is not a degree: expected one kind of accidental at character 2, found 'b'. Example: b6
            6b | 1 | "6b" is not a degree: expected the end at character 2, found 'b'. Example: b6
            66 | 1 | "66" is not a degree: expected the end at character 2, found '6'. Example: b6
            """)
    void degrees(String text, int place, String message) {
        refused(Degree::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a mode: expected one of lydian, major, mixolydian, dorian, minor, phrygian, locrian. Example: dorian
            dorain | 0 | "dorain" is not a mode: expected one of lydian, major, mixolydian, dorian, minor, phrygian, locrian. Example: dorian
            major scale | 0 | "major scale" is not a mode: expected one of lydian, major, mixolydian, dorian, minor, phrygian, locrian. Example: dorian
            """)
    void modes(String text, int place, String message) {
        refused(Mode::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a scale: no scale has this name. Example: harmonic minor
            harmonik | 0 | "harmonik" is not a scale: no scale has this name. Example: harmonic minor
            """)
    void kindsOfScale(String text, int place, String message) {
        refused(ScaleKind::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a scale: expected a letter from A to G at character 1, found the end. Example: E harmonic minor
            Hb major | 0 | "Hb major" is not a scale: expected a letter from A to G at character 1, found 'H'. Example: E harmonic minor
            C | 1 | "C" is not a scale: expected a space and the kind of scale at character 2, found the end. Example: E harmonic minor
            Cmajor | 1 | "Cmajor" is not a scale: expected a space and the kind of scale at character 2, found 'm'. Example: E harmonic minor
            Cb# major | 2 | "Cb# major" is not a scale: expected one kind of accidental at character 3, found '#'. Example: E harmonic minor
            C magic | 2 | "magic" is not a scale: no scale has this name. Example: harmonic minor
            """)
    void scales(String text, int place, String message) {
        refused(Scale::parse, text, place, message);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @CsvSource(delimiter = '|', textBlock = """
            '' | 0 | "" is not a key: expected a letter from A to G at character 1, found the end. Example: D major
            H major | 0 | "H major" is not a key: expected a letter from A to G at character 1, found 'H'. Example: D major
            Dmm | 1 | "Dmm" is not a key: expected major, minor or another mode at character 2, found 'm'. Example: D major
            D magic | 1 | "D magic" is not a key: expected major, minor or another mode at character 2, found ' '. Example: D major
            D minor pentatonic | 1 | "D minor pentatonic" is not a key: expected major, minor or another mode at character 2, found ' '. Example: D major
            Cb# major | 2 | "Cb# major" is not a key: expected one kind of accidental at character 3, found '#'. Example: D major
            Cbbb major | 3 | "Cbbb major" is not a key: no key has a tonic with three accidentals. Example: D major
            """)
    void keys(String text, int place, String message) {
        refused(Key::parse, text, place, message);
    }

    @Test
    void aMessageQuotesFortyCharactersAtMostAndNoControlCharacters() {
        refused(
                NoteName::parse,
                "I am the very model of a modern major general",
                0,
                "\"I am the very model of a modern major ge…\" is not a note name:"
                        + " expected a letter from A to G at character 1, found 'I'. Example: Eb");
        refused(
                NoteName::parse,
                "E\u001b[2J",
                1,
                "\"E\uFFFD[2J\" is not a note name: expected b, bb, #, x or the end at character 2, found '\uFFFD'."
                        + " Example: Eb");
        refused(
                NoteName::parse,
                "E\u202eb",
                1,
                "\"E\uFFFDb\" is not a note name: expected b, bb, #, x or the end at character 2, found '\uFFFD'."
                        + " Example: Eb");
    }

    @Test
    void aPartThatCannotBeReadKnowsItsPlaceInTheWhole() {
        Unreadable whole = Unreadable.at("Eq", 1, "a note name", "b", "Eb").within("C Eq G", 2);
        assertEquals(3, whole.place());
        assertEquals("C Eq G", whole.text());
    }
}
