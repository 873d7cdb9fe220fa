package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each named fault is found, at its chord and in its voices, and nothing else is. */
class StrictnessTest {
    /**
     * Source: Integrated Music Theory (open university course text), lesson 10b, for what each fault is; the rows are our
     * own, and the last mends the first.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 E3 G3 E4 | F2 F3 A3 F4 | C3 E3 G3 E4 ! 1 parallel-octaves 13; 2 parallel-octaves 13
            D3 A3 D4 F4 | C3 G3 E4 G4               ! 1 parallel-fifths 01
            F3 C4 | G2 D4 | C3 G3                   ! 1 contrary-fifths 01; 2 contrary-fifths 01
            F2 C4 F4 A4 | C3 C4 G4 C5               ! 1 direct-octaves 03
            F#2 C4 A4 D5 | G2 D4 G4 D5              ! 1 unequal-fifths 01
            C3 E3 G3 C4 | F2 F3 A3 C4 | C3 E3 G3 C4 ! ''
            """)
    void choraleRulesFindWhatTheTextbookShows(String passage, String found) {
        assertEquals(found, Marked.by(Strictness.CHORALE, passage));
    }

    /**
     * Source: the rules as Open Music Theory, 1st edition (2014), has them on first species, figured bass and intervals,
     * and Integrated Music Theory, lesson 10a; the rows are our own.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C4 C4 | D4 D4                     ! 1 parallel-unisons 01; 1 overlap 01
            C4 C5 | B3 B5                     ! 1 contrary-octaves 01
            C4 E5 | D4 A5                     ! 1 direct-fifths 01
            C4 F5 | D4 A5                     ! 1 direct-fifths 01
            C3 E4 G4 | D3 D4 A4               ! 1 parallel-fifths 02
            C4 B4 | F4 C5                     ! ''
            C4 E4 A4 | F4 F4 C5               ! 1 direct-fifths 02; 1 overlap 01
            C4 G3 | C4 G4                     ! 0 crossing 01
            C3 G3 E3 | C3 G3 G3               ! 0 crossing 12
            E4 G4 | B3 D4                     ! 1 overlap 01
            C4 E4 | F4 A4                     ! 1 overlap 01
            C4 E4 | E4 G4                     ! ''
            C3 Ab4 | C3 B4                    ! 1 augmented-step 1
            C3 F4 | C3 B4                     ! 1 augmented-step 1
            C3 B3 | C3 F4                     ! ''
            C3 C4 | C3 C#4                    ! ''
            C4 G4 | B3 F4                     ! ''
            C4 G4 | C4 G4                     ! ''
            C3 G3 C4 | C3 A3 C4               ! ''
            B2 F3 D4 | C3 G3 E4               ! 1 unequal-fifths 01
            G2 B2 F3 | E2 C3 G3               ! ''
            """)
    void choraleRulesFindEachFaultAndNothingElse(String passage, String found) {
        assertEquals(found, Marked.by(Strictness.CHORALE, passage));
    }

    /** Source: worked by hand. Parallels are judged from note to note, not from beat to beat. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 G3 | C3 A3 | D3 A3  ! ''
            C3 G3 | D3 A3          ! 1 parallel-fifths 01
            C3 G3 | D3 A3 | D3 F3  ! 1 parallel-fifths 01
            C3 G3 | C3 G3 | D3 A3  ! 2 parallel-fifths 01
            """)
    void everyOnsetIsJudged(String passage, String found) {
        assertEquals(found, Marked.by(Strictness.CHORALE, passage));
    }

    /** Common practice, no source: see {@link Strictness#BAND}. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            G2 G3 B3 D4 | Ab2 Ab3 C4 Eb4   ! remark 1 block 0123
            G2 B3 D4 G4 | Ab2 C4 Eb4 Ab4   ! remark 1 block 0123; 1 parallel-octaves 03
            G2 B3 D4 F4 | C3 C4 E4 G4      ! remark 1 block 123
            G2 C4 D4 G4 | Ab2 C4 Eb4 G4    ! ''
            C2 C3 E4 G4 | F2 F3 C4 A4      ! ''
            C3 E4 G4    | D3 D4 A4         ! remark 1 parallel-fifths 02
            C3 E4 C5    | D3 D4 D5         ! 1 parallel-octaves 02
            C4 E4 C4    | D4 F4 D4         ! remark 0 crossing 12; remark 1 block 012; 1 parallel-unisons 02; remark 1 crossing 12
            F3 C4 A4 F5 | G3 D4 B4 D5      ! remark 1 block 012
            F2 C4 F4 A4 | C3 C4 G4 C5      ! ''
            C3 E3 G3 C4 E4 G4 | D3 F3 A3 D4 G4 B4 ! remark 1 block 0123
            """)
    void bandPracticeHearsBlocksAndADoubledTune(String passage, String found) {
        assertEquals(found, Marked.by(Strictness.BAND, passage));
    }

    /** Source: parallel sixth chords are a pattern in Integrated Music Theory, lesson 17b: a block, no fault. */
    @ParameterizedTest(name = "by {0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            CHORALE ! ''
            BAND    ! remark 1 block 012; remark 2 block 012
            """)
    void sixthChordsInARow(Strictness strictness, String found) {
        assertEquals(found, Marked.by(strictness, "E4 G4 C5 | D4 F4 B4 | C4 E4 A4"));
    }
}
