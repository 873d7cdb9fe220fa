package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import monochord.practice.skill.Skills;
import monochord.theory.Chord;
import monochord.theory.Key;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three hints: a nudge, the first move, and all but the last. Read one by one; common practice, no source. */
class HintsTest {
    @ParameterizedTest(name = "{0} of {1} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            steps               | harmonic minor | E  | Count moves, not keys: the key you stand on is nought. | From E to F♯ is a whole step. | All but the last: whole half whole whole half three-half-steps.
            scale-spelling      | dorian         | F# | Write the letters first, each once. Then mend each step with a sharp or a flat. | From F♯, a whole step to G♯ and a half step to A. | All but the last: F♯ G♯ A B C♯ D♯.
            interval            | m6             | C# | Find the letter first, counting C♯ as 1. | Letters: C D E F G A. So it is some kind of A. | Some kind of A, eight half steps away from C♯.
            degree-quality      | 7              | Ab | Take every other note of the scale from that degree, and listen for the half steps you pass over. | Count up A♭ B♭ C D♭ E♭ F G: G is the seventh. | The notes are G B♭ D♭. Measure the lower third, then the upper one.
            inversion           | V65            | A  | Turn the notes round until only thirds are left: every other letter. | Stacked in thirds: E G♯ B D. | The root is E; the lowest note goes behind the slash.
            suspension          | V7sus4         | Eb | A suspended chord has no third. Another note sits in its place. | The number says which: the fourth above B♭. | B♭, F and A♭ are there in any case. Between them comes the fourth, five half steps above the root.
            lowered-degree      | b3             | Gb | Find the plain degree first, then move it a half step and keep its letter. | Count from G♭ as 1 up to the third. | Count up G♭ A♭ B♭: B♭ is the third. Now a half step down, same letter.
            borrowed-chord      | bVI            | D  | Root first, then the letters, then the quality. | Count up D E F♯ G A B: B is the sixth. Lowered, it stands a half step down, on the same letter. | Count up D E F♯ G A B: B is the sixth. A half step down, same letter, is B♭. B♭ and D, then leave out a letter and take the next. The chord is major.
            borrowed-chord      | iiø7           | G  | Root first, then the letters, then the quality. | Count up G A: A is the second. | Count up G A: A is the second. A, C and E♭, then leave out a letter and take the next. The chord is of the m7♭5 kind.
            progression-in-key  | 1 b6 b7 1      | B  | Roots first, quality second. 1 is B. | Count up B C♯ D♯ E F♯ G♯ A♯: A♯ is the seventh. A half step down, same letter, is A. So ♭7 is A. | All but the last: B G A.
            progression-numbers | 4 1 5 b6       | F# | Count the letters of the roots from F♯ as 1. | Count up F♯ G♯ A♯ B C♯ D♯: D♯ is the sixth. A half step down, same letter, is D. So D is ♭6. | All but the last: 4 1 5.
            """)
    void helpInThreeSteps(String skill, String subject, String key, String nudge, String first, String allButLast) {
        assertEquals(
                List.of(nudge, first, allButLast),
                Asked.words(Asked.question(skill, subject, key).hints()));
    }

    @Test
    @DisplayName("the third hint for a borrowed chord names all its tones but the last")
    void namesAllTonesButTheLast() {
        List<Question> fuller = Stream.concat(Key.majorKeys().stream(), Key.minorKeys().stream())
                .flatMap(key -> Skills.find("borrowed-chord").orElseThrow().subjects(key).stream()
                        .map(subject ->
                                Skills.find("borrowed-chord").orElseThrow().question(key, subject)))
                .toList();
        assertTrue(fuller.size() > 100, "questions: " + fuller.size());
        for (Question question : fuller) {
            List<String> tones = Chord.parse(question.expected()).tones().stream()
                    .map(tone -> Writings.signs(tone.toString()))
                    .toList();
            String named =
                    String.join(", ", tones.subList(0, tones.size() - 2)) + " and " + tones.get(tones.size() - 2);
            assertTrue(
                    Asked.words(question.hints()).get(2).contains(named + ", then leave out"),
                    question + Asked.words(question.hints()).get(2));
        }
    }
}
