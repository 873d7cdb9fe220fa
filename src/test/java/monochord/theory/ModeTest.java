package monochord.theory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.theory.note.Degree;
import monochord.theory.note.NoteName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModeTest {
    /** Source: Open Music Theory (2014), "scales2", CC BY-SA 4.0; the row on D is arithmetic. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            ionian     | C | 0 2 4 5 7 9 11 | C D E F G A B      | D E F# G A B C#
            dorian     | D | 0 2 3 5 7 9 10 | C D Eb F G A Bb    | D E F G A B C
            phrygian   | E | 0 1 3 5 7 8 10 | C Db Eb F G Ab Bb  | D Eb F G A Bb C
            lydian     | F | 0 2 4 6 7 9 11 | C D E F# G A B     | D E F# G# A B C#
            mixolydian | G | 0 2 4 5 7 9 10 | C D E F G A Bb     | D E F# G A B C
            aeolian    | A | 0 2 3 5 7 8 10 | C D Eb F G Ab Bb   | D E F G A Bb C
            locrian    | B | 0 1 3 5 6 8 10 | C Db Eb F Gb Ab Bb | D Eb F G Ab Bb C
            """)
    void modesAreWindowsOfTheWhiteKeys(String name, String whiteTonic, String halfSteps, String onC, String onD) {
        Mode mode = Mode.parse(name);
        Scale white = new Scale(NoteName.parse(whiteTonic), ScaleKind.of(mode));
        assertTrue(white.tones().stream().allMatch(tone -> tone.alteration() == 0));
        assertEquals(
                halfSteps,
                Written.words(mode.degrees().stream().map(Degree::semitones).toList()));
        assertEquals(onC, Written.words(Key.parse("C " + name).scale().tones()));
        assertEquals(onD, Written.words(Key.parse("D " + name).scale().tones()));
    }

    /** Source: Open Music Theory (2014), "scales2", CC BY-SA 4.0: how each mode differs from major or natural minor. */
    @ParameterizedTest(name = "{0} is {1} with {3} for {2}")
    @CsvSource(delimiter = '|', textBlock = """
            dorian     | minor | b6 | 6
            phrygian   | minor | 2  | b2
            lydian     | major | 4  | '#4'
            mixolydian | major | 7  | b7
            locrian    | minor | 2 5 | b2 b5
            """)
    void aModeDiffersFromMajorOrMinorInAFewDegrees(String name, String near, String without, String with) {
        List<Degree> own = Mode.parse(name).degrees();
        List<Degree> others = Mode.parse(near).degrees();
        assertEquals(
                without,
                Written.words(others.stream().filter(d -> !own.contains(d)).toList()));
        assertEquals(
                with,
                Written.words(own.stream().filter(d -> !others.contains(d)).toList()));
        assertEquals(with.split(" ").length, Mode.parse(name).distance(Mode.parse(near)));
    }

    @Test
    void everyModeComesRound() {
        for (Mode mode : Mode.values()) {
            assertEquals(mode, Mode.parse(mode.toString()));
            assertEquals(mode, Mode.parse(mode.name()));
        }
    }

    @Test
    void eachModeInTurnLowersOneDegree() {
        for (int i = 1; i < Mode.values().length; i++) {
            Mode bright = Mode.values()[i - 1];
            Mode dark = Mode.values()[i];
            int lowered = 0;
            for (int number = 1; number <= 7; number++) {
                int change =
                        bright.degree(number).alteration() - dark.degree(number).alteration();
                assertTrue(change == 0 || change == 1);
                lowered += change;
            }
            assertEquals(1, lowered);
        }
    }

    @Test
    void aModeHoldsItsOwnDegreesAndNoOthers() {
        for (Mode mode : Mode.values()) {
            for (int fifths = -20; fifths <= 20; fifths++) {
                Degree degree = Degree.ofFifths(fifths);
                assertEquals(mode.degrees().contains(degree), mode.holds(degree));
            }
            for (int number = 1; number <= 7; number++) {
                assertEquals(mode.degrees().get(number - 1), mode.degree(number));
            }
        }
    }
}
