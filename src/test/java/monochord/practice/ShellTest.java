package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A large chord laid out as a shell. What a shell leaves out: common practice, no source. */
class ShellTest {
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource(delimiter = ';', textBlock = """
            V7 shell  ; G2 | B3 F4       ; right  ; Yes: G2 | B3 F4 keeps every rule.
            V9 shell  ; G2 | B3 F4 A4    ; right  ; Yes: G2 | B3 F4 A4 keeps every rule.
            V13 shell ; G2 | F3 B3 E4    ; right  ; Yes: G2 | F3 B3 E4 keeps every rule.
            V7 shell  ; G2 | B3 D4 F4    ; nearly ; Nearly. D is the fifth, and a shell leaves it out.
            V9 shell  ; G2 G3 | B3 F4 A4 ; nearly ; Nearly. For a shell that is too full: four notes are the most.
            """)
    void whatAShellIs(String subject, String answer, String grade, String message) {
        Verdict verdict = Asked.verdict("voicing", subject, "C", answer);
        assertEquals(grade, verdict.grade().toString());
        assertEquals(message, verdict.message().toString());
    }

    @Test
    @DisplayName("it is asked for by name")
    void saysWhatIsWanted() {
        assertEquals(
                "Lay G9, V9 in C major, out as a shell, at most four notes without the fifth, for two hands, neither beyond an"
                        + " octave. Write the left hand, a bar and the right hand.",
                Asked.question("voicing", "V9 shell", "C").prompt().toString());
    }

    @Test
    @DisplayName("the model of a shell is a right answer in every key")
    void theModelIsAShell() {
        for (Key key : Key.majorKeys()) {
            for (String subject : new String[] {"V7 shell", "V9 shell", "V13 shell"}) {
                Question question =
                        Asked.question("voicing", subject, key.tonic().toString());
                assertEquals(subject, question.subject());
                assertEquals(Grade.RIGHT, question.judge(question.expected()).grade(), question.expected());
            }
        }
    }
}
