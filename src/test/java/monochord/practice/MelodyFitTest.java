package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What fits over a chord is common practice, no source. */
class MelodyFitTest {
    @ParameterizedTest(name = "{0} in {1}, answered {2}: {3}, {4}")
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            3 over bVI       | C | clash       | right      | -
            3 over bVI       | C | it clashes  | right      | -
            3 over bVI       | C | chord tone  | wrong      | letters-only
            3 over bVI       | C | colour      | wrong      | key-for-chord
            1 over bVI       | D | a chord tone | right     | -
            5 over bVI       | D | tension     | right      | -
            4 over I         | G | suspension  | right      | -
            4 over I         | G | clash       | wrong      | -
            7 over bVII      | E | fits        | unreadable | -
            mend 3 over bVI  | C | Eb          | right      | -
            mend 3 over bVI  | C | F           | remark     | -
            mend 3 over bVI  | C | E           | wrong      | key-for-chord
            mend 3 over bVI  | C | D#          | nearly     | spelled-by-sound
            mend 3 over bVI  | C | A           | wrong      | -
            mend 6 over iv   | D | Bb          | right      | -
            mend 7 over bVII | F | E flat      | right      | -
            """)
    void judges(String subject, String key, String answer, String grade, String misconception) {
        Verdict verdict = Asked.verdict("melody-fit", subject, key, answer);
        assertEquals(grade, verdict.grade().toString(), () -> verdict.message().toString());
        assertEquals(misconception, verdict.misconception());
    }

    @Test
    void asks() {
        Question question = Asked.question("melody-fit", "E over Ab", "C");
        assertEquals("3 over bVI", question.subject());
        assertEquals(
                "In C major a tune rests on E over A♭. Chord tone, colour, suspension or clash?",
                question.prompt().toString());
        assertEquals("choice", question.form().toString());
        assertEquals(
                "In A major a tune rests on C♯ over F, and it clashes. Which note, as near as can be, would fit?",
                Asked.question("melody-fit", "mend 3 over bVI", "A").prompt().toString());
    }

    @ParameterizedTest(name = "{0} cannot be asked: {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '\'', textBlock = """
            'E'                | '"E" is not a note over a chord: expected a degree or a note, over, and a chord. Example: 3 over bVI'
            'H over Ab'        | '"H" is not a degree: expected a number from 1 to 7 at character 1, found ''H''. Example: b6'
            'E over Hm'        | '"Hm" is not a chord: expected a letter from A to G at character 1, found ''H''. Example: Abmaj7'
            'mend 1 over bVI'  | '"mend 1 over bVI" is not a note to mend: C does not clash with Ab. Example: mend 3 over bVI'
            """)
    void refuses(String subject, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> Asked.question("melody-fit", subject, "C"));
        assertEquals(message, refusal.getMessage());
    }
}
