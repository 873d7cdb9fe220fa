package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mistakes that teachers know, typed with the answer they lead to.
 *
 * <p>Sources: the root of a borrowed chord left unaltered, Integrated Music Theory (open university course text), lesson
 * 16a; the white-key look of intervals, Open Music Theory (2014), page "intervals"; the others common teaching
 * experience, no source.
 */
class TypicalMistakesTest {
    @ParameterizedTest(name = "{0} of {1} in {2}: {3} comes from {4}")
    @CsvSource(delimiter = '|', textBlock = """
            steps               | major          | D  | 3 3 2 3 3 3 2       | counted-the-start
            steps               | major          | D  | W W H W W W         | missing-note
            steps               | minor          | D  | W W H W W W H       | other-scale
            steps               | harmonic minor | D  | W H W W H W W       | not-raised
            steps               | harmonic minor | D  | W H W W W W H       | wrong-degree-raised
            scale-spelling      | major          | F  | F G A A# C D E      | letter-repeated
            scale-spelling      | major          | Ab | Ab Bb C C# Eb F G   | letter-repeated
            scale-spelling      | major          | F# | Gb Ab Bb Cb Db Eb F | spelled-by-sound
            scale-spelling      | major          | D  | D E F G A B C       | signature-forgotten
            scale-spelling      | major          | G  | G A B C D E         | missing-note
            scale-spelling      | major          | G  | G A B C D E F F#    | letter-repeated
            scale-spelling      | minor          | C  | A B C D E F G       | relative-for-parallel
            scale-spelling      | harmonic minor | A  | A B C D E F G       | not-raised
            scale-spelling      | harmonic minor | A  | A B C D E F# G#     | wrong-degree-raised
            scale-spelling      | harmonic minor | G# | G# A# B C# D# E G   | letter-repeated
            scale-spelling      | major          | G  | G A B C D E F       | signature-forgotten
            scale-spelling      | dorian         | D  | D E F# G A B C      | other-scale
            key-signature       | major          | A  | 3 flats             | sharps-for-flats
            key-signature       | major          | Eb | Bb Eb               | last-sign-for-tonic
            key-signature       | major          | D  | 1 sharp             | missing-note
            key-signature       | major          | D  | 3 sharps            | extra-note
            key-signature       | minor          | A  | 3 sharps            | parallel-for-relative
            key-signature       | minor          | A  | G#                  | not-raised
            interval            | M3             | C  | F                   | counted-from-zero
            interval            | M3             | E  | G                   | signature-forgotten
            interval            | m3             | E  | G#                  | wrong-quality
            interval            | A4             | C  | Gb                  | spelled-by-sound
            interval            | m3             | C  | D#                  | spelled-by-sound
            interval            | P5             | G  | C                   | wrong-way
            interval            | C G            | C  | P4                  | wrong-way
            interval            | C E            | C  | M2                  | counted-from-zero
            interval            | C Gb           | C  | A4                  | spelled-by-sound
            interval            | C Eb           | C  | M3                  | wrong-quality
            triad-spelling      | Cm             | C  | C D# G              | spelled-by-sound
            triad-spelling      | Caug           | C  | C E Ab              | spelled-by-sound
            triad-spelling      | Cdim           | C  | C Eb G              | wrong-quality
            triad-spelling      | F#m            | C  | F A C               | letters-only
            triad-spelling      | C              | C  | C G                 | missing-note
            triad-spelling      | C              | C  | C E G B             | extra-note
            degree-quality      | 3              | Eb | major               | quality-of-the-key
            degree-quality      | 7              | C  | minor               | wrong-quality
            degree-quality      | 2              | C  | diminished          | wrong-quality
            degree-chord        | 6              | G  | F#dim               | counted-from-zero
            degree-chord        | 3              | D  | F A C               | signature-forgotten
            degree-chord        | 2              | C  | D                   | quality-of-the-key
            degree-chord        | 7              | C  | Bm                  | wrong-quality
            degree-chord        | 6              | C  | Dm                  | wrong-degree
            degree-chord        | 6              | C  | Am7                 | extra-note
            degree-chord        | 6              | E  | Dbm                 | spelled-by-sound
            chord-degree        | 6              | G  | V                   | counted-from-zero
            chord-degree        | 6              | G  | VI                  | wrong-quality
            chord-degree        | 6              | G  | i                   | wrong-key
            chord-degree        | 2              | D  | iii                 | wrong-degree
            lowered-degree      | b6             | C  | A                   | not-lowered
            lowered-degree      | b6             | C  | G#                  | spelled-by-sound
            lowered-degree      | b6             | A  | Fb                  | signature-forgotten
            lowered-degree      | b6             | C  | Abb                 | lowered-too-far
            lowered-degree      | b6             | Db | A                   | spelled-by-sound
            lowered-degree      | b6             | C  | Bb                  | counted-from-zero
            borrowed-chord      | bVI            | C  | A C# E              | not-lowered
            borrowed-chord      | bVI            | C  | A                   | not-lowered
            borrowed-chord      | bVI            | C  | Am                  | not-lowered
            borrowed-chord      | bVI            | C  | G# C D#             | spelled-by-sound
            borrowed-chord      | bVI            | C  | Ab C E              | root-only
            borrowed-chord      | bVI            | C  | F                   | relative-for-parallel
            borrowed-chord      | bVI            | C  | Abm                 | wrong-quality
            borrowed-chord      | bVI            | C  | Ab C                | missing-note
            borrowed-chord      | bVI            | Eb | B                   | spelled-by-sound
            borrowed-chord      | bVI            | C  | Bb                  | counted-from-zero
            borrowed-chord      | bIII           | A  | C E G#              | root-only
            borrowed-chord      | iv             | C  | F                   | quality-of-the-key
            borrowed-chord      | iv             | C  | Fb Abb Cb           | root-lowered
            borrowed-source     | bVI            | C  | A minor             | relative-for-parallel
            borrowed-source     | bVI            | C  | C dorian            | wrong-source
            borrowed-source     | bVI            | C  | F minor             | wrong-key
            progression-in-key  | 4 1 5 b6 5 1   | D  | G D A Bm A D        | not-lowered
            progression-in-key  | 4 1 5 b6 5 1   | D  | F C G Ab G C        | wrong-key
            progression-in-key  | 1 3- 4 5       | D  | D Fm G A            | letters-only
            progression-in-key  | 1 6- 4 5       | D  | D B G A             | quality-of-the-key
            progression-in-key  | 4 1 5 b6 5 1   | Gb | Cb Gb Db D Db Gb    | spelled-by-sound
            progression-in-key  | 1 4 5 1        | D  | Em A Bm Em          | counted-from-zero
            progression-in-key  | 1 4 5 1        | D  | D G A               | missing-note
            progression-numbers | D G A Bb       | D  | 1 4 5 6             | not-lowered
            progression-numbers | D A            | D  | 2 6                 | wrong-key
            """)
    void mistakes(String skill, String subject, String key, String answer, String misconception) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(misconception, verdict.misconception(), verdict::toString);
        assertTrue(verdict.grade() == Grade.WRONG || verdict.grade() == Grade.NEARLY, verdict::toString);
    }

    @ParameterizedTest(name = "{0} of {1} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            borrowed-chord | bVI | A | F A C# | nearly | Nearly. F and A are right. C♯ still belongs to A major: measure it from the new root.
            borrowed-chord | bVI | Eb | B | nearly | Nearly. The right keys, the wrong letters. Where you have B, some kind of C is due. A chart may print B; asked to spell it, keep the letters.
            borrowed-chord | bVI | C | A C# E | wrong | The root of A stands where the key has it. Count up C D E F G A: A is the sixth. Lowered, it stands a half step down, on the same letter.
            borrowed-chord | iv | C | F | nearly | Nearly. F is the key's own chord there. The root stays; inside the chord A moves a half step.
            borrowed-chord | bVI | C | F | wrong | You counted from A, the tonic of the relative. Stay on C and count its lowered sixth.
            borrowed-chord | bVI | C | Ab C | nearly | Nearly. A♭ and C are right. The fifth is missing.
            borrowed-chord | bVI | C | Ab Db Eb | nearly | Nearly. A♭ and E♭ are right. D♭ is not: the third lies four half steps above the root.
            scale-spelling | major | F | F G A A# C D E | nearly | Nearly. The keys are right, the letters are not. Where you have A♯, the letter B is due.
            scale-spelling | harmonic minor | G# | G# A# B C# D# E G | nearly | Nearly. The keys are right, the letters are not. Where you have G, the letter F is due.
            degree-chord | 3 | D | F A C | wrong | The letters are right, but the signature counts in every chord, and here it has two sharps.
            degree-chord | 6 | C | Am7 | nearly | Nearly. The whole chord is there. G is one note too many.
            interval | m3 | C | D# | nearly | Nearly. The right key on the piano, under the wrong letter: some kind of E is due.
            key-signature | major | Eb | Bb Eb | nearly | Nearly. You stopped where the last sign is E♭ itself. The last flat is the fourth degree.
            chord-degree | 6 | G | VI | nearly | Nearly. The degree is right. Capitals would be E; a small third takes small letters.
            lowered-degree | b6 | Db | A | nearly | Nearly. The right key on the piano, under the wrong letter: some kind of B is due. A chart may print A; spelled out, the letter stays.
            borrowed-source | bVI | C | A minor | wrong | A minor is the relative: it has the notes you began with, so there is nothing in it to borrow. The parallel stands on C.
            progression-in-key | 4 1 5 b6 5 1 | D | G D A Bm A D | nearly | Nearly. ♭6 was played as 6: the flat in front has been passed over. The sixth of D major is B; the ♭6 stands a half step lower.
            degree-quality | 7 | C | minor | wrong | Every other note of the scale from there: B D F. Which third lies below, which above?
            """)
    void messages(String skill, String subject, String key, String answer, String grade, String message) {
        Verdict verdict = Asked.verdict(skill, subject, key, answer);
        assertEquals(message, verdict.message().toString());
        assertEquals(grade, verdict.grade().toString());
    }

    @Test
    @DisplayName("a spelling that only sounds right is told apart from a wrong note")
    void soundsRight() {
        assertEquals(
                "spelled-by-sound",
                Asked.verdict("borrowed-chord", "bVI", "C", "G# C D#").misconception());
        assertEquals(
                "root-only",
                Asked.verdict("borrowed-chord", "bVI", "C", "Ab C E").misconception());
        assertEquals(
                "spelled-by-sound",
                Asked.verdict("triad-spelling", "Cm", "C", "C D# G").misconception());
        assertEquals(
                "wrong-quality",
                Asked.verdict("triad-spelling", "Cm", "C", "C E G").misconception());
    }

    /** A chord on another root is another chord, also where the two share a tone; common teaching practice, no source. */
    @ParameterizedTest(name = "{0} of {1} in {2}: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            borrowed-chord | bVI | D | Gb  | G♭ is another chord. Count up D E F♯ G A B: B is the sixth. Lowered, it stands a half step down, on the same letter.
            borrowed-chord | bVI | D | Bbm | Nearly. The root is right. ♭VI asks for a major chord.
            degree-chord   | 5   | C | Eb  | E♭ is another chord. Count up C D E F G: G is the fifth.
            """)
    void aChordElsewhere(String skill, String subject, String key, String answer, String message) {
        assertEquals(
                message, Asked.verdict(skill, subject, key, answer).message().toString());
    }
}
