package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Subjects as a teacher names them, and what is said to one that cannot be asked. Source: the forms are our own; chords
 * and keys were spelled by hand.
 */
class SubjectsTest {
    @ParameterizedTest(name = "{0} of {1} in {2} asks: {5}")
    @CsvSource(delimiter = '|', textBlock = """
            scale-spelling   | E harmonic minor | C | E harmonic minor | E minor  | notes       | Spell E harmonic minor, from E.
            scale-spelling   | natural minor    | C | minor            | C major  | notes       | Spell C minor, from C.
            scale-spelling   | Em               | C | E minor          | E minor  | notes       | Spell E minor, from E.
            steps            | G mixolydian     | C | G mixolydian     | G major  | interval    | Walk up one octave of G mixolydian. Which steps are they? W for a whole step, H for a half step, 3 for three half steps.
            triad-spelling   | Abm              | C | Abm              | Ab minor | notes       | Spell the A♭ minor triad, root first.
            triad-spelling   | A♭ minor         | C | Abm              | Ab minor | notes       | Spell the A♭ minor triad, root first.
            triad-spelling   | Minor            | D | minor            | D major  | notes       | Spell the D minor triad, root first.
            interval         | minor third      | D | m3               | D major  | notes       | Which note lies a minor third above D?
            interval         | m3 above F#      | D | m3 above F#      | D major  | notes       | Which note lies a minor third above F♯?
            interval         | -M3              | C | -M3              | C major  | notes       | Which note lies a major third below C?
            interval         | C Eb             | G | C Eb             | G major  | interval    | Which interval is it from C up to E♭?
            key-signature    | F# minor         | C | F# minor         | F# minor | signature   | What is the key signature of F♯ minor?
            degree-quality   | 3                | Eb | 3               | Eb major | quality     | In E♭ major, what quality has the triad on the third degree?
            degree-quality   | vii°             | Eb | 7               | Eb major | quality     | In E♭ major, what quality has the triad on the seventh degree?
            degree-chord     | vi               | G | 6                | G major  | chord       | Which triad stands on the sixth degree of G major?
            chord-degree     | Em               | G | Em               | G major  | numeral     | In G major, which degree is Em? A numeral or a number will do.
            borrowed-chord   | ♭VI              | D | bVI              | D major  | chord       | Which chord is ♭VI in D major, the major chord on the lowered sixth?
            borrowed-chord   | b6               | D | bVI              | D major  | chord       | Which chord is ♭VI in D major, the major chord on the lowered sixth?
            borrowed-chord   | IV               | A minor | IV         | A minor  | chord       | Which chord is IV in A minor, the major chord on the fourth?
            lowered-degree   | b6               | D | b6               | D major  | notes       | Which note is the lowered sixth of D major?
            borrowed-source  | iv               | D | iv               | D major  | choice      | iv in D major is G B♭ D. Which scale on D does it come from? Where there are several, the nearest.
            progression-in-key | IV I V bVI     | D | 4 1 5 b6         | D major  | progression | Name the chords in D major: 4 1 5 ♭6.
            progression-numbers | D Bm G A      | D | 1 6- 4 5         | D major  | number      | Say these chords as numbers in D major: D Bm G A.
            """)
    void asks(String skill, String subject, String key, String canonical, String keyAsked, String form, String prompt) {
        Question question = Asked.question(skill, subject, key);
        assertEquals(prompt, question.prompt().toString());
        assertEquals(canonical, question.subject());
        assertEquals(keyAsked, question.key().toString());
        assertEquals(form, question.form().toString());
        assertEquals(skill, question.skillId());
        assertEquals(question, Asked.question(skill, question.subject(), key));
    }

    @ParameterizedTest(name = "{0} cannot be asked of {1} in {2}")
    @CsvSource(delimiter = '|', textBlock = """
            scale-spelling     | quickly  | C  | "quickly" is not a scale: expected a letter from A to G at character 1, found 'q'. Example: E harmonic minor
            triad-spelling     | C7       | C  | "C7" is not a triad: major, minor, diminished and augmented ones are asked. Example: Abm
            interval           | P1       | C  | "P1" is not an interval to ask: from a second to two octaves is asked. Example: m3
            interval           | C C#     | C  | "C C#" is not two notes to measure: the second has another letter. Example: C Eb
            key-signature      | minor    | Db | "minor" is not a key with a signature: Db minor needs more than seven signs. Example: F# minor
            degree-quality     | b6       | C  | "b6" is not a degree of the key: expected a number from 1 to 7. Example: 6
            degree-chord       | IV7      | C  | "IV7" is not a degree of the key: it is not one of the key's own chords. Example: 6
            borrowed-chord     | vi       | C  | "vi" is not a borrowed chord: it is the key's own chord in C major. Example: bVI
            borrowed-source    | #IV      | C  | "#IV" is not a borrowed chord: no parallel scale holds it. Example: bVI
            common-tones       | F Ab G   | C  | "F Ab G" is not two chords to compare: expected two of them. Example: F Ab
            lowered-degree     | 6        | C  | "6" is not a lowered degree: one flat or sharp stands in front. Example: b6
            """)
    void refuses(String skill, String subject, String key, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> Asked.question(skill, subject, key));
        assertEquals(message, refusal.getMessage());
    }

    @Test
    @DisplayName("the derivation walks from the tonic to the chord, as a teacher would say it")
    void derivation() {
        Question question = Asked.question("borrowed-chord", "bVI", "D");
        assertEquals(
                "Count up D E F♯ G A B: B is the sixth. A half step down, same letter, is B♭. "
                        + "From B♭ up, four half steps give D and seven half steps give F. The chord is B♭: B♭ D F.",
                question.derivation().toString());
    }

    @Test
    @DisplayName("why: to a wrong answer the rule and where it was broken, to a right one all the way")
    void explains() {
        Question question = Asked.question("borrowed-chord", "bVI", "D");
        assertEquals(
                "A flat in front of a degree says: a half step below the degree of the major scale. Bm is the key's own "
                        + "chord there. Count up D E F♯ G A B: B is the sixth. Lowered, it stands a half step down, on the "
                        + "same letter.",
                question.explain(question.judge("Bm")).toString());
        assertEquals(
                question.derivation().toString(),
                question.explain(question.judge("Bb")).toString());
    }

    @Test
    @DisplayName("hints go from a nudge to all but the last step")
    void hints() {
        assertEquals(
                java.util.List.of(
                        "Root first, then the letters, then the quality.",
                        "Count up D E F♯ G A B: B is the sixth. Lowered, it stands a half step down, on the same letter.",
                        "Count up D E F♯ G A B: B is the sixth. A half step down, same letter, is B♭. "
                                + "B♭ and D, then leave out a letter and take the next. The chord is major."),
                Asked.words(Asked.question("borrowed-chord", "bVI", "D").hints()));
    }

    @Test
    @DisplayName("every misconception's id is found again")
    void ids() {
        for (Misconception one : Misconception.values()) {
            assertEquals(one, Misconception.find(one.id()).orElseThrow());
        }
        assertEquals("spelled-by-sound", Misconception.SPELLED_BY_SOUND.id());
        assertTrue(Misconception.find(null).isEmpty());
    }
}
