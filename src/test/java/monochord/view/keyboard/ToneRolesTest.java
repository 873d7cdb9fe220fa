package monochord.view.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import monochord.text.Reader;
import monochord.theory.Chord;
import monochord.theory.Scale;
import monochord.theory.note.NoteName;
import monochord.theory.note.Signs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source. */
class ToneRolesTest {
    @ParameterizedTest(name = "{0} has the roles {1}")
    @CsvSource(delimiter = '|', textBlock = """
            Abmaj7   | Ab R, C 3, Eb 5, G 7
            Abm7     | Ab R, Cb 3, Eb 5, Gb 7
            Co7      | C R, Eb 3, Gb b5, Bbb 7
            Caug     | C R, E 3, G# #5
            Gsus4    | G R, C 4, D 5
            Csus2    | C R, D 2, G 5
            C6       | C R, E 3, G 5, A 6
            E7(b9,#9) | E R, G# 3, B 5, D 7, F b9, F## #9
            F7#11    | F R, A 3, C 5, Eb 7, B #11
            """)
    void eachToneHasItsRole(String symbol, String roles) {
        Chord chord = Chord.parse(symbol);
        String found = chord.tones().stream()
                .map(tone -> tone + " " + ToneRoles.of(chord, tone).label(Reader.of(Signs.ASCII)))
                .collect(Collectors.joining(", "));
        assertEquals(roles, found);
    }

    @Test
    void aNoteOutsideTheChordHasNone() {
        assertEquals(ToneRole.NONE, ToneRoles.of(Chord.parse("C"), NoteName.parse("F")));
    }

    @ParameterizedTest(name = "{0} in close position is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C        | C4 E4 G4
            C9       | C4 E4 G4 Bb4 D5
            C9/E     | E4 G4 Bb4 C5 D5
            Bb/Ab    | Ab4 Bb4 D5 F5
            Cb       | Cb5 Eb5 Gb5
            """)
    void aChordIsStackedFromItsBass(String symbol, String pitches) {
        String found = ToneRoles.close(Chord.parse(symbol)).stream()
                .map(mark -> mark.pitch().toString())
                .collect(Collectors.joining(" "));
        assertEquals(pitches, found);
    }

    @Test
    void inWordsAScaleCountsItsDegrees() {
        KeyboardPictureTest.assertPicture(
                KeyboardWords.scale(Scale.parse("A minor pentatonic"), Reader.ENGLISH, 80), """
                A: first.
                C: lowered third.
                D: fourth.
                E: fifth.
                G: lowered seventh.
                A: octave.
                """);
    }

    @Test
    void inWordsABassFromOutsideIsSaidToBeOne() {
        KeyboardPictureTest.assertPicture(KeyboardWords.chord(Chord.parse("F/G"), Reader.ENGLISH, 20), """
                G: bass, not in the
                  chord.
                F: root.
                A: third.
                C: fifth.
                """);
    }
}
