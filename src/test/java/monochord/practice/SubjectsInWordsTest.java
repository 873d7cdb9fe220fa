package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Subjects as people put them. Source of the horns' distances: Integrated Music Theory, lesson 12a; the rest counted by hand. */
class SubjectsInWordsTest {
    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            interval      | m3 below Eb               | Which note lies a minor third below E♭?                             | C
            interval      | m3 down from Eb           | Which note lies a minor third below E♭?                             | C
            interval      | major third under G       | Which note lies a major third below G?                              | Eb
            interval      | P5 down                   | Which note lies a perfect fifth below C?                            | F
            interval      | -m3                       | Which note lies a minor third below C?                              | A
            interval      | m3 up from F              | Which note lies a minor third above F?                              | Ab
            transposition | C F G for alto            | These chords sound in C major: C F G. What do you write for E♭ instruments? | A D E
            transposition | C F G for trumpet         | These chords sound in C major: C F G. What do you write for B♭ instruments? | D G A
            transposition | Am Dm E from Am for horn  | These chords sound in A minor: Am Dm E. What do you write for F instruments? | Em Am B
            """)
    void areUnderstood(String skill, String subject, String prompt, String expected) {
        Question question = Asked.question(skill, subject, "C");
        assertEquals(prompt, question.prompt().toString());
        assertEquals(expected, question.expected());
        Question again =
                Asked.question(skill, question.subject(), question.key().toString());
        assertEquals(prompt, again.prompt().toString());
    }
}
