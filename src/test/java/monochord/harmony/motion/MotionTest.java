package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two voices, and the four ways in which they can move. */
class MotionTest {
    private static VoicePair pair(String passage) {
        return Passage.parse(passage).steps().get(0).pairs().get(0);
    }

    /** Source: Open Music Theory, 1st edition (2014), the music example on kinds of motion; CC BY-SA 4.0. */
    @ParameterizedTest(name = "{0} is {1} motion")
    @CsvSource(delimiter = '!', textBlock = """
            C4 A4 | D4 B4 ! parallel
            C4 G4 | A3 F4 ! similar
            C4 E4 | A3 F4 ! contrary
            C4 G4 | B3 G4 ! oblique
            """)
    void namesTheMotion(String passage, String motion) {
        assertEquals(motion, pair(passage).motion().toString());
    }

    /** Source: worked by hand from the definitions; what counts as moving is our decision, see {@link Motion}. */
    @ParameterizedTest(name = "{0} is {1} motion")
    @CsvSource(delimiter = '!', textBlock = """
            C4 G4   | C4 G4   ! still
            C4 G#4  | C4 Ab4  ! still
            C4 A4   | D4 Bb4  ! parallel
            C4 E4   | C#4 E#4 ! parallel
            C4 E4   | C5 E5   ! parallel
            C4 G4   | D4 B5   ! similar
            E4 C4   | F4 D4   ! parallel
            C4 C4   | D4 B3   ! contrary
            C4 G4   | B3 F#4  ! parallel
            """)
    void goesBySoundWhetherAVoiceMovesAndByLettersHowFar(String passage, String motion) {
        assertEquals(motion, pair(passage).motion().toString());
    }

    /**
     * Source: Integrated Music Theory (open university course text), lesson 10b, for what counts as parallel, contrary and
     * repeated; the rows are our own.
     */
    @ParameterizedTest(name = "{0}: parallel {1}, contrary {2}, repeated {3}")
    @CsvSource(delimiter = '!', textBlock = """
            C4 G4 | D4 A4   ! 5 ! 0 ! 0
            C4 G4 | D4 A5   ! 5 ! 0 ! 0
            C4 G5 | A3 E4   ! 5 ! 0 ! 0
            C4 G4 | F3 C4   ! 5 ! 0 ! 0
            C4 C5 | D4 D5   ! 8 ! 0 ! 0
            C4 C5 | D4 D6   ! 8 ! 0 ! 0
            C4 C5 | F4 F4   ! 0 ! 8 ! 0
            C4 C5 | G4 G4   ! 0 ! 8 ! 0
            C4 C4 | D4 D4   ! 1 ! 0 ! 0
            C4 C4 | D4 D5   ! 8 ! 0 ! 0
            C4 C5 | B3 B5   ! 0 ! 8 ! 0
            C4 G4 | B3 F#5  ! 0 ! 5 ! 0
            C3 G4 | F3 C4   ! 0 ! 5 ! 0
            C4 G4 | C4 G4   ! 0 ! 0 ! 5
            C4 C5 | C4 C5   ! 0 ! 0 ! 8
            C4 C4 | C4 C4   ! 0 ! 0 ! 1
            B3 F4 | C4 G4   ! 0 ! 0 ! 0
            C4 G4 | B3 F4   ! 0 ! 0 ! 0
            C4 F4 | D4 G4   ! 0 ! 0 ! 0
            C4 G4 | C4 G5   ! 0 ! 0 ! 0
            G4 C4 | A4 D4   ! 5 ! 0 ! 0
            """)
    void tellsParallelContraryAndRepeatedApart(String passage, int parallel, int contrary, int repeated) {
        VoicePair pair = pair(passage);
        assertEquals(
                List.of(parallel, contrary, repeated),
                List.of(
                        pair.parallel().number(),
                        pair.contrary().number(),
                        pair.repeated().number()));
    }

    /** Source: worked by hand. */
    @ParameterizedTest(name = "{0}: {1} kept, {2} shared, {3} half steps")
    @CsvSource(delimiter = '!', textBlock = """
            C3 G3 E4 C5 | A2 A3 E4 C5   ! E4 C5    ! C E   ! 5  ! -3 2 0 0
            C3 G3 E4 C5 | F3 A3 F4 C5   ! C5       ! C     ! 8  ! 5 2 1 0
            G2 B3 D4    | Ab2 C4 Eb4    ! ''       ! ''    ! 3  ! 1 1 1
            C4 E4 G4    | E4 G4 C5      ! E4 G4    ! C E G ! 12 ! 4 3 5
            C4 E4 G#4   | C4 E4 Ab4     ! C4 E4 G#4 ! C E G# ! 0 ! 0 0 0
            C3 C4 E4    | C3 C4 F4      ! C3 C4    ! C     ! 1  ! 0 0 1
            """)
    void countsWhatIsKeptAndHowFarTheRestGoes(String passage, String kept, String shared, int moved, String voices) {
        MotionStep step = Passage.parse(passage).steps().get(0);
        assertEquals(kept, Passage.write(step.kept(), monochord.theory.note.Signs.ASCII));
        assertEquals(
                shared,
                String.join(" ", step.shared().stream().map(Object::toString).toList()));
        assertEquals(moved, step.moved());
        assertEquals(
                voices,
                String.join(
                        " ",
                        step.moves().stream().map(move -> "" + move.semitones()).toList()));
    }

    /** Source: our own rule, see {@link VoiceMatching}; worked by hand. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 E4 G4       | C3 E4 G4 C5    ! 0:C3-C3 1:E4-E4 2:G4-G4 ! C5    ! ''
            C3 E4 G4 C5    | D3 F4 A4       ! 0:C3-D3 1:E4-F4 2:G4-A4 ! ''    ! C5
            C3 E4 G4 C5    | E4 G4 C5       ! 1:E4-E4 2:G4-G4 3:C5-C5 ! ''    ! C3
            Eb3 F4 A4 C5   | D3 F4 Bb4      ! 0:Eb3-D3 1:F4-F4 2:A4-Bb4 ! ''  ! C5
            C4             | B3 D4 G4       ! 0:C4-B3 ! D4 G4 ! ''
            A3             | G3 B3          ! 1:A3-B3 ! G3 ! ''
            """)
    void matchesChordsOfDifferentFullnessToTheNearest(String passage, String moves, String entering, String ending) {
        MotionStep step = Passage.parse(passage).steps().get(0);
        assertEquals(
                moves,
                String.join(
                        " ", step.moves().stream().map(m -> m.voice() + ":" + m).toList()));
        assertEquals(entering, Passage.write(step.entering(), monochord.theory.note.Signs.ASCII));
        assertEquals(ending, Passage.write(step.ending(), monochord.theory.note.Signs.ASCII));
    }

    @Test
    @DisplayName("every two voices make a pair, in order")
    void everyTwoVoicesMakeAPair() {
        MotionStep step = Passage.parse("C3 G3 E4 C5 | A2 A3 E4 C5").steps().get(0);
        assertEquals(
                List.of("0-1 contrary", "0-2 oblique", "0-3 oblique", "1-2 oblique", "1-3 oblique", "2-3 still"),
                step.pairs().stream()
                        .map(pair -> pair.lower().voice() + "-" + pair.upper().voice() + " " + pair.motion())
                        .toList());
    }

    @Test
    @DisplayName("outer voices are those that are outermost in both chords")
    void outerVoices() {
        assertEquals(
                true,
                Passage.parse("C3 E4 G4 | D3 F4 A4").steps().get(0).outer().isPresent());
        assertEquals(
                false,
                Passage.parse("C3 E4 G4 C5 | E4 G4 C5").steps().get(0).outer().isPresent());
        assertEquals(false, Passage.parse("C3 | D3").steps().get(0).outer().isPresent());
        assertEquals(
                Pitch.parse("G4"),
                Passage.parse("C3 E4 G4 | D3 F4 A4")
                        .steps()
                        .get(0)
                        .outer()
                        .orElseThrow()
                        .upper()
                        .from());
    }
}
