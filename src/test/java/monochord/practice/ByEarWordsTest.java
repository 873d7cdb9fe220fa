package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said about answers to questions for the ear, and how their subjects are read. Common practice, no source. */
class ByEarWordsTest {
    @ParameterizedTest(name = "{0} of {1} in {2}: {3} comes from {4}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | P5             | D | P4              | turned-over
            ear-interval    | m6             | D | M3              | turned-over
            ear-interval    | m6             | D | M6              | size-misheard
            ear-interval    | P4             | D | tritone         | size-misheard
            ear-interval    | tritone        | D | P5              | size-misheard
            ear-interval    | M3             | D | M10             | octave-off
            ear-interval    | P8             | D | unison          | octave-off
            ear-interval    | m7             | D | M6              | steps-miscounted
            ear-quality     | major          | D | minor           | third-misheard
            ear-quality     | major          | D | aug             | fifth-misheard
            ear-quality     | diminished     | D | minor           | fifth-misheard
            ear-quality     | 7              | D | maj7            | wrong-seventh
            ear-quality     | 7              | D | major           | missing-note
            ear-quality     | minor          | D | m7              | extra-note
            ear-quality     | sus4           | D | major           | third-kept
            ear-quality     | major first inversion  | D | minor   | bass-for-root
            ear-quality     | 7 first inversion      | D | dim     | bass-for-root
            ear-progression | I bVI bVII I   | D | I vi bVII I     | neighbour-for-borrowed
            ear-progression | I IV iv I      | D | I IV IV I       | neighbour-for-borrowed
            ear-progression | I bVII IV I    | D | I V IV I        | neighbour-for-borrowed
            ear-progression | I bVII IV I    | D | D C#dim G D     | neighbour-for-borrowed
            ear-progression | I V vi IV      | D | 1 5 1 4         | tones-shared
            ear-progression | I ii V I       | D | 1 4 5 1         | tones-shared
            ear-progression | I IV V I       | D | 1 4 3- 1        | tones-shared
            ear-progression | I IV V I       | D | I iv V I        | bass-without-quality
            ear-progression | I IV V I       | D | I IV V7 I       | bass-without-quality
            ear-progression | I IV V I       | D | I V V I         | quality-without-bass
            ear-progression | I V vi IV      | D | III VII i VI    | wrong-key
            ear-progression | I V vi IV      | D | bIII bVII i bVI | wrong-key
            """)
    void slipsOfTheEar(String skill, String subject, String key, String answer, String misconception) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertFalse(verdict.grade().isRight(), () -> verdict.message().toString());
        assertEquals(
                misconception, verdict.misconception(), () -> verdict.message().toString());
        assertTrue(Misconception.find(misconception).isPresent());
    }

    @ParameterizedTest(name = "{0} of {1}: {2} is right, with a word to it")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | m3           | A2          | Yes: an augmented second sounds the same. It was B up to D, and that is written as a minor third.
            ear-quality     | minor        | Am          | Yes, minor. Here it stood on B: B D F♯.
            ear-quality     | m7           | 6           | Yes: those are the same keys, named from another of them. Named from B it is a minor seventh: B D F♯ A.
            ear-progression | I bVI bVII I | D A# C D    | Yes, those are the chords. In D major they are spelled D B♭ C D: I ♭VI ♭VII I.
            """)
    void otherNames(String skill, String subject, String answer, String message) {
        Verdict verdict = Asked.verdict(skill, subject, "D", answer);
        assertEquals(message, verdict.message().toString());
        assertEquals(Grade.REMARK, verdict.grade());
    }

    @ParameterizedTest(name = "{0} of {1}, answered {2}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | m6            | M6          | Nearly. You heard a major sixth; it was a minor sixth, C♯ up to A. Yours is wider by a half step. A minor sixth leans on the fifth a half step below its top; a major sixth stands open, a whole step above the fifth.
            ear-interval    | P5 together   | P4          | You heard a perfect fourth; it was a perfect fifth, B with F♯ above it. Turned over, the same two notes make yours, narrower by two half steps. A perfect fifth is bare and rests on its lower note; a perfect fourth is bare and leans on its upper note.
            ear-interval    | P8 down       | unison      | Nearly. You heard a perfect unison; it was a perfect octave, E down to E. The same two letters, but yours lie an octave closer.
            ear-interval    | m6            | m6          | Yes, a minor sixth: C♯ up to A, eight half steps.
            ear-quality     | minor         | major       | Nearly. You heard major; it was minor: B D F♯. Yours has D♯ for D, a half step higher. Minor is dark and at rest. Major is bright and at rest.
            ear-quality     | 7             | major       | Nearly. You heard major; it was a dominant seventh: A C♯ E G. Yours lacks G. A dominant seventh is bright with an edge, and wants to move on. Major is bright and at rest.
            ear-quality     | minor         | augmented   | You heard augmented; it was minor: B D F♯. Yours has D♯ and F𝄪 for D and F♯. Minor is dark and at rest. Augmented is bright and stretched, with no home.
            ear-quality     | minor         | minor       | Yes, minor: B D F♯.
            ear-progression | I bVI bVII I  | 1 6 b7 1    | Nearly. Chord 2: it was ♭VI, B♭; you heard vi, Bm. The bass goes to B♭, a half step lower than B. The chord is major, yours is minor. D is in both. B♭ and F come from outside D major. All of it: I ♭VI ♭VII I.
            ear-progression | I IV iv I     | I IV IV I   | Nearly. Chord 3: it was iv, Gm; you heard IV, G. The bass is G in both. Yours has B for B♭, a half step higher. B♭ comes from outside D major. All of it: I IV iv I.
            ear-progression | I V vi IV     | 3- 7 1- 6   | Four differ. Chord 1: it was I, D; you heard iii, F♯m. The bass goes to D, four half steps lower than F♯. The chord is major, yours is minor. F♯ and A are in both, so from above they are alike. All of it: I V vi IV.
            ear-progression | I bVI bVII I  | 1 1 b6 b7 1 | Yes: I ♭VI ♭VII I, that is D B♭ C D.
            ear-progression | I bVI bVII I  | 1 b6 b7     | "1 b6 b7" is not a row of chords: four sounded behind the tonic, and here are three. Example: vi IV I V.
            ear-interval    | m6            | 4           | You heard a perfect fourth; it was a minor sixth, C♯ up to A. Yours is narrower by three half steps. A minor sixth leans on the fifth a half step below its top; a perfect fourth is bare and leans on its upper note.
            ear-interval    | M2            | whole step  | Yes, a major second: A up to B, two half steps.
            ear-interval    | M2            | semitone    | Nearly. You heard a minor second; it was a major second, A up to B. Yours is narrower by a half step. A major second is a plain step; a minor second rubs.
            ear-interval    | m6            | a sixth     | "sixth" is not one interval: say which sixth: major, minor, augmented or diminished. Example: minor third.
            ear-interval    | m6            | 6           | "6" is not one interval: say which sixth: major, minor, augmented or diminished. Example: minor third.
            ear-quality     | minor         | sad         | "sad" is not a quality: a word or a sign for it is enough. Example: sus4.
            """)
    void saysWhatWasHeardWhatItWasAndWhatTheDifferenceIs(String skill, String subject, String answer, String message) {
        assertEquals(
                message, Asked.verdict(skill, subject, "D", answer).message().toString());
    }

    @Test
    @DisplayName("hints go from listening to singing to all but the last step")
    void hints() {
        assertEquals(
                List.of(
                        "Hear it again, and follow the bass alone: does it step, leap, or come home?",
                        "Sing the tonic, D, then each bass note, and count from the tonic up. The first goes to D.",
                        "All but the last: I ♭VI ♭VII."),
                Asked.words(
                        Asked.question("ear-progression", "I bVI bVII I", "D").hints()));
        assertEquals(
                "The bass goes D B♭ C D, and over it stand D, B♭, C and D: I ♭VI ♭VII I. Borrowed: B♭ and C.",
                Asked.question("ear-progression", "I bVI bVII I", "D")
                        .derivation()
                        .toString()
                        .replace(". Over", ", and over"));
    }

    @ParameterizedTest(name = "{0} in {2} is read as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | minor sixth          | C | m6
            ear-interval    | -m6                  | C | m6 down
            ear-interval    | d5 together          | C | tritone together
            ear-quality     | 7                    | C | dominant seventh
            ear-quality     | m first inversion    | C | minor first inversion
            ear-quality     | minor root position  | C | minor
            ear-progression | 1 b6 b7 1            | C | I bVI bVII I
            ear-progression | D Bb C D             | D | I bVI bVII I
            ear-progression | D/F# G               | D | I IV
            """)
    void subjects(String skill, String subject, String key, String canonical) {
        assertEquals(canonical, Asked.question(skill, subject, key).subject());
    }

    @ParameterizedTest(name = "{0} cannot be asked of {1}")
    @CsvSource(delimiter = '|', textBlock = """
            ear-interval    | P1         | "P1" is not an interval to hear: those of a scale are heard, from a second to a tenth. Example: m6 down
            ear-interval    | A2         | "A2" is not an interval to hear: those of a scale are heard, from a second to a tenth. Example: m6 down
            ear-quality     | major third inversion | "major third inversion" is not a chord to hear: it has no third inversion. Example: minor first inversion
            ear-progression | I          | "I" is not a row of chords to hear: from two to 16 are played. Example: I bVI bVII I
            ear-progression | I V13      | "I V13" is not a row of chords to hear: triads and sevenths are heard. Example: I bVI bVII I
            """)
    void refuses(String skill, String subject, String message) {
        assertEquals(
                message,
                assertThrows(Unreadable.class, () -> Asked.question(skill, subject, "C"))
                        .getMessage());
    }
}
