package monochord.theory.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import monochord.theory.Key;
import monochord.theory.Mode;
import monochord.theory.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NoteNameTest {
    /** Source: arithmetic on the white keys C D E F G A B at 0 2 4 5 7 9 11 half steps. */
    @ParameterizedTest(name = "{0} is {1} half steps above C")
    @CsvSource(delimiter = '|', textBlock = """
            C   | 0
            D   | 2
            E   | 4
            F   | 5
            G   | 7
            A   | 9
            B   | 11
            F#  | 6
            Gb  | 6
            Cb  | 11
            B#  | 0
            F## | 7
            Bbb | 9
            Dbb | 0
            """)
    void countsHalfStepsAboveC(String name, int halfSteps) {
        assertEquals(halfSteps, NoteName.parse(name).pitchClass());
    }

    /** Source: arithmetic on the white keys; the pairs every keyboard method lists. */
    @ParameterizedTest(name = "{0} and {1} are one key")
    @CsvSource(delimiter = '|', textBlock = """
            C#  | Db
            D#  | Eb
            F#  | Gb
            G#  | Ab
            A#  | Bb
            E#  | F
            Fb  | E
            B#  | C
            Cb  | B
            C## | D
            D## | E
            E## | F#
            F## | G
            G## | A
            A## | B
            B## | C#
            Dbb | C
            Ebb | D
            Fbb | Eb
            Gbb | F
            Abb | G
            Bbb | A
            Cbb | Bb
            """)
    void twoNamesForOneKeySoundAlikeButAreNotEqual(String one, String other) {
        assertTrue(NoteName.parse(one).soundsLike(NoteName.parse(other)));
        assertNotEquals(NoteName.parse(one), NoteName.parse(other));
    }

    /** Source: order of sharps and of flats, Open Music Theory (2014), "keySignatures", CC BY-SA 4.0. */
    @Test
    void sharpsAndFlatsFollowTheLineOfFifths() {
        assertEquals(
                "F# C# G# D# A# E# B#", Written.words(new Key(NoteName.parse("C#"), Mode.IONIAN).signatureNotes()));
        assertEquals(
                "Bb Eb Ab Db Gb Cb Fb", Written.words(new Key(NoteName.parse("Cb"), Mode.IONIAN).signatureNotes()));
    }

    @ParameterizedTest(name = "{0} is read as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            c    | C
            bb   | Bb
            b    | B
            E♭   | Eb
            F♯   | F#
            Fx   | F##
            F𝄪   | F##
            B𝄫   | Bbb
            bbb  | Bbb
            F#x  | F###
            C♭♭  | Cbb
            """)
    void otherWritingsAreRead(String written, String name) {
        assertEquals(name, NoteName.parse(written).toString());
    }

    @Test
    void everyNameWithUpToSixAccidentalsComesRound() {
        assertEquals(7 * 13, new HashSet<>(Written.names(6)).size());
        for (NoteName name : Written.names(6)) {
            assertEquals(name, NoteName.parse(name.toString()));
            assertEquals(name, NoteName.parse(name.write(Signs.MUSIC)));
            assertEquals(name, NoteName.of(name.letter(), name.alteration()));
        }
    }

    @Test
    void everyNameThatCanBeWrittenOutCanBeReadBack() {
        for (NoteName name : Written.names(13)) {
            assertEquals(name, NoteName.parse(name.toString()));
        }
    }

    @Test
    void theSimplestNameOfAKeyHasAtMostOneAccidental() {
        for (NoteName name : Written.names(4)) {
            assertTrue(name.simplest().soundsLike(name));
            assertTrue(Math.abs(name.simplest().alteration()) <= 1);
        }
    }

    @Test
    void namesAreEqualExactlyWhenTheyAreSpelledAlike() {
        for (NoteName one : Written.names(2)) {
            for (NoteName other : Written.names(2)) {
                assertEquals(one.toString().equals(other.toString()), one.equals(other));
            }
        }
    }

    @Test
    void nothingLiesPastAHundredFifths() {
        assertEquals(
                "fifths must be from -100 to 100, not 101",
                assertThrows(IllegalArgumentException.class, () -> NoteName.at(101))
                        .getMessage());
        assertEquals(
                "letter must be from A to G, not H",
                assertThrows(IllegalArgumentException.class, () -> NoteName.of('H', 0))
                        .getMessage());
    }

    /** Source: read off the keyboard. */
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "C#, Db",
        "Eb, D#",
        "'F#', Gb",
        "Bb, A#",
        "C, Dbb",
        "B, Cb",
        "F, E#",
        "E, Fb",
        "Cb, B",
        "Bbb, A",
        "Fx, G"
    })
    void respellsAKey(String name, String other) {
        assertEquals(other, NoteName.parse(name).respelled().toString());
    }

    @Test
    void aRespelledNameSoundsAlikeAndHasAnotherLetter() {
        for (int fifths = -18; fifths <= 18; fifths++) {
            NoteName name = NoteName.at(fifths);
            NoteName other = name.respelled();
            assertTrue(name.soundsLike(other), name::toString);
            assertTrue(name.letter() != other.letter(), name::toString);
        }
    }
}
