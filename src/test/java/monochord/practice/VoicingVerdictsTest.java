package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Voicings as learners type them. What is right and wrong was worked out at the keyboard from the rules.
 *
 * <p>Source: doubling and omission, Integrated Music Theory (open university course text), lesson 10a; low limits, a trade
 * rule; an octave's reach, common practice.
 */
class VoicingVerdictsTest {
    @ParameterizedTest(name = "{0} in {1}: {2} is {3}, {4}")
    @CsvSource(delimiter = ';', textBlock = """
            bVImaj7 ; C ; Ab2 Eb3 | C4 G4            ; right      ;
            bVImaj7 ; C ; Ab2 | C4 G4                ; right      ;
            bVImaj7 ; C ; Ab2 | G4 C4                ; right      ;
            bVImaj7 ; C ; left Ab2 Eb3, right C4 G4  ; right      ;
            bVImaj7 ; C ; A♭2 E♭3 | C4 G4            ; right      ;
            bVImaj7 ; C ; a flat2 | c4 g4            ; right      ;
            bVImaj7 ; C ; G#2 Eb3 | C4 G4            ; nearly     ; spelled-by-sound
            bVImaj7 ; C ; Ab2 Eb3 | C4 F4            ; wrong      ; extra-note
            bVImaj7 ; C ; Ab2 Eb3 | C4 C5            ; nearly     ; missing-note
            bVImaj7 ; C ; C3 Ab3 | Eb4 G4            ; nearly     ; wrong-bass
            bVImaj7 ; C ; Ab2 G3 | C4 G4             ; nearly     ; doubled-tendency
            bVImaj7 ; C ; Ab2 Eb3 | C4 G5            ; nearly     ; out-of-reach
            bVImaj7 ; C ; Ab1 C2 | Eb4 G4            ; nearly     ; too-low
            bVImaj7 ; C ; Ab2 G3 | Eb3 C4            ; nearly     ; hands-crossed
            V7      ; C ; G2 | F4 B4                 ; right      ;
            V7      ; C ; G2 | B3 F4 B4              ; nearly     ; doubled-tendency
            V7      ; C ; G2 F3 | B3 F4              ; nearly     ; doubled-tendency
            V       ; C ; G2 D3 | B3 B4              ; nearly     ; doubled-tendency
            V       ; C ; G2 D3 | G3 B3              ; right      ;
            Vsus4   ; C ; G2 D3 | C4 G4              ; right      ;
            Vsus4   ; C ; G2 D3 | B3 C4              ; wrong      ; third-kept
            Vsus4   ; C ; G2 C3 | D4                 ; nearly     ; too-low
            I6      ; C ; E3 | G3 C4                 ; right      ;
            I6      ; C ; C3 | E3 G3                 ; nearly     ; wrong-bass
            i       ; Am ; A2 E3 | C4 E4             ; right      ;
            V7      ; Am ; E2 B2 | G#3 D4            ; right      ;
            V7      ; Am ; E2 B2 | G3 D4             ; wrong      ; extra-note
            bVI     ; C ; Ab2 Eb3 | Ab3 C4           ; right      ;
            bVI     ; C ; Ab2 Eb3 | C4 C5            ; right      ;
            I       ; C ; C2 G2 | E3 C4              ; nearly     ; too-low
            I       ; C ; C E G                      ; unreadable ;
            I       ; C ; C3 | E G                   ; unreadable ;
            I       ; C ; |                          ; unreadable ;
            """)
    void judges(String subject, String key, String answer, String grade, String misconception) {
        Verdict verdict = Asked.verdict("voicing", subject, key, answer);
        assertEquals(grade + " " + misconception, verdict.grade() + " " + verdict.misconception(), verdict::toString);
    }

    @Test
    @DisplayName("the verdict says which notes break which rule")
    void says() {
        assertEquals(
                "Nearly. G is the seventh and wants to fall; doubled, two voices would fall in octaves. "
                        + "Double the root instead.",
                Asked.verdict("voicing", "bVImaj7", "C", "Ab2 G3 | C4 G4")
                        .message()
                        .toString());
        assertEquals(
                "Nearly. From C4 to G5 is further than an octave. Bring one of them an octave nearer.",
                Asked.verdict("voicing", "bVImaj7", "C", "Ab2 Eb3 | C4 G5")
                        .message()
                        .toString());
        assertEquals(
                "Nearly. A♭1 and C2 are too close for so low a place and will sound muddy. Move them up, or apart.",
                Asked.verdict("voicing", "bVImaj7", "C", "Ab1 C2 | Eb4 G4")
                        .message()
                        .toString());
    }

    @Test
    @DisplayName("asks for a voicing")
    void asks() {
        Question question = Asked.question("voicing", "b6maj7", "C");
        assertEquals("bVImaj7", question.subject());
        assertEquals(AnswerForm.VOICING, question.form());
        assertEquals(
                "Lay A♭maj7, ♭VImaj7 in C major, out for two hands, neither beyond an octave. "
                        + "Write the left hand, a bar and the right hand.",
                question.prompt().toString());
        assertTrue(
                question.derivation().toString().contains("A♭ C E♭ G"),
                () -> question.derivation().toString());
    }
}
