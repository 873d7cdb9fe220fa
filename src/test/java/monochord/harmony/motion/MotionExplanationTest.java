package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a teacher says: whole sentences. Source: the words are ours; what is found follows from the rules in {@link
 * Strictness}, read off by hand.
 */
class MotionExplanationTest {
    @ParameterizedTest(name = "{1}: {0}")
    @CsvSource(delimiter = '!', textBlock = """
            F3 C4 A4 F5 | G3 D4 B4 D5 ! CHORALE ! Parallel fifths between bass and tenor: F3 C4 to G3 D4. Let C hang over as the fourth of Gsus4, and let it fall a step afterwards.
            F3 C4 | G2 D4             ! CHORALE ! Fifths by contrary motion between lower voice and upper voice: F3 C4 to G2 D4. The bass goes down: take the others up to their nearest notes.
            F2 C4 F4 A4 | C3 C4 G4 C5 ! CHORALE ! The soprano leaps up into an octave with the bass, which goes the same way: F2 A4 to C3 C5. The bass goes up: take the others down to their nearest notes.
            D3 G4 A4 B4 | E3 F#4 G#4 B4 ! CHORALE ! ''
            B2 F3 D4 | C3 G3 C4       ! CHORALE ! A diminished fifth opens into a perfect one between bass and middle voice: B2 F3 to C3 G3. The bass goes up: take the others down to their nearest notes.
            C3 G3 E3 | C3 G3 G3       ! CHORALE ! The middle voice crosses the top voice: G3 lies above E3.
            E4 G4 | B3 D4             ! CHORALE ! The upper voice goes to D4, below the E4 that the lower voice had before. The bass goes down: take the others up to their nearest notes.
            C4 E4 | F4 A4             ! CHORALE ! The lower voice goes to F4, above the E4 that the upper voice had before. The bass goes up: take the others down to their nearest notes.
            C3 Ab4 | C3 B4            ! CHORALE ! The upper voice goes an augmented second: A♭4 to B4, awkward to sing.
            G2 G3 B3 D4 | Ab2 Ab3 C4 Eb4 ! BAND ! All four voices go up together as one block: a colour, but a flat one. Play Gsus4 first: its C belongs to the next chord too and can stay.
            G2 B3 D4 F4 | C3 C4 E4 G4 ! BAND   ! Second voice, third voice and top voice go up together as one block: a colour, but a flat one. Let F hang over as the fourth of Csus4, and let it fall a step afterwards.
            C3 E4 C5 | D3 D4 D5       ! BAND    ! Parallel octaves between bass and top voice: C3 C5 to D3 D5. The bass goes up: take the others down to their nearest notes.
            """)
    void says(String text, Strictness strictness, String said) {
        Passage passage = Passage.parse(text);
        MotionExplanation explanation = new MotionExplanation(passage, strictness);
        List<String> sentences = strictness.judge(passage).stream()
                .map(finding -> explanation.of(finding)
                        + explanation
                                .instead(finding)
                                .map(remedy -> " " + remedy)
                                .orElse(""))
                .toList();
        assertEquals(said, String.join(" / ", sentences));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 G3 E4 C5 | A2 A3 E4 C5 ! 5 half steps in all, E4 and C5 kept. ! Contrary: bass–tenor. Oblique: bass–alto, bass–soprano, tenor–alto, tenor–soprano. Still: alto–soprano.
            C4 E4 G4 | E4 A4 C5       ! 14 half steps in all, E4 kept. ! Similar: bass–middle, bass–top. Parallel: middle–top.
            C3 | B2                   ! 1 half step in all, no note in common. ! ''
            C3 E3 | C4 G3             ! 15 half steps in all, C in common but not kept. ! Similar: lower–upper.
            C3 E4 G4 | C3 E4 G4 C5    ! 0 half steps in all, C3, E4 and G4 kept; C5 new. ! Still: bass–tenor, bass–alto, tenor–alto.
            """)
    void sumsUp(String text, String sum, String motions) {
        Passage passage = Passage.parse(text);
        MotionExplanation explanation = new MotionExplanation(passage, Strictness.CHORALE);
        assertEquals(sum, explanation.sum(passage.steps().get(0)).toString());
        assertEquals(motions, explanation.motions(passage.steps().get(0)).toString());
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            G2 B3 D4 G4 | Ab2 C4 Eb4 Ab4 ! Suspend[plain=G, suspended=Gsus4, tone=C, first=true]
            F2 A3 C4 F4 | G2 B3 D4 G4    ! Suspend[plain=G, suspended=Gsus4, tone=C, first=false]
            A2 C4 E4 A4 | G2 B3 D4 G4    ! Suspend[plain=G, suspended=Gsus4, tone=C, first=false]
            C3 E4 G4 C5 | F3 C4 A4 F5    ! Hold[pitch=C5]
            C3 D3 | E3 F#3               ! AgainstBass[bassGoesUp=true]
            C3 D3 | C3 E3                ! ''
            """)
    void findsWhatCouldBeHeld(String text, String remedy) {
        Optional<Remedy> found = Remedy.of(Passage.parse(text).steps().get(0));
        assertEquals(remedy, found.map(Object::toString).orElse(""));
    }
}
