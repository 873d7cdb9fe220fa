package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which notes two chords share, and how outer voices move. */
class HeldAndMovedTest {
    /**
     * Source: the chords are spelled as in Integrated Music Theory, lessons 4 and 16a; what they share is read off the
     * letters.
     */
    @ParameterizedTest(name = "{0} in {1} share {2}")
    @CsvSource(delimiter = '|', textBlock = """
            F Ab        | C  | C
            C Am        | C  | C E
            C Em        | C  | E G
            Gsus4 Abmaj7 | C | G C
            G Ab        | C  | none
            IV bVI      | D  | D
            1 5         | Gb | Db
            4 4-        | E  | A E
            E Ab        | C  | G#
            1- 6        | F minor | F Ab
            """)
    void share(String subject, String key, String tones) {
        assertEquals(tones, Asked.question("common-tones", subject, key).expected());
    }

    /**
     * Source: the first four, Open Music Theory, 1st edition (2014), the music example on kinds of motion; the next two
     * are laid out by us, their outer voices read by hand.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C4 A4 | D4 B4             ! parallel
            C4 G4 | A3 F4             ! similar
            C4 E4 | A3 F4             ! contrary
            C4 G4 | B3 G4             ! oblique
            C3 E4 G4 C5 | G2 D4 G4 B4 ! similar
            F2 C4 F4 A4 | G2 B3 D4 G4 ! contrary
            """)
    void move(String subject, String motion) {
        assertEquals(motion, Asked.question("motion", subject, "C").expected());
    }

    @ParameterizedTest(name = "{0} of {1}, answered {2}: {3}, {4}")
    @CsvSource(delimiter = '!', nullValues = "-", textBlock = """
            common-tones ! F Ab ! A C    ! nearly ! not-lowered       ! Nearly. That is so with Am, the key's own chord. A♭ is A♭ C E♭.
            common-tones ! F Fm ! F A C  ! nearly ! wrong-quality     ! Nearly. That is so with F, the key's own chord. Fm is F A♭ C.
            common-tones ! C Eb ! E G    ! nearly ! not-lowered       ! Nearly. That is so with Em, the key's own chord. E♭ is E♭ G B♭.
            common-tones ! C Am ! C      ! nearly ! missing-note      ! Nearly. C is right, and there is more. Go on through C note by note.
            common-tones ! C Am ! E      ! nearly ! missing-note      ! Nearly. E is right, and there is more. Go on through C note by note.
            common-tones ! C Am ! none   ! wrong  ! missing-note      ! They do share something. Spell C and look for each of its notes in Am.
            common-tones ! G Ab ! G      ! wrong  ! extra-note        ! A♭ has no G: it is A♭ C E♭.
            common-tones ! F Ab ! F C    ! nearly ! extra-note        ! Nearly. A♭ has no F: it is A♭ C E♭.
            common-tones ! Cm Eb ! D# G  ! nearly ! spelled-by-sound  ! Nearly. The right keys on the piano, under other letters than the chords have them. Spell both.
            common-tones ! C Am ! A E C  ! nearly ! extra-note        ! Nearly. C has no A: it is C E G.
            common-tones ! C Am ! E, C   ! right  ! -                 ! Yes: C is C E G, Am is A C E.
            common-tones ! E Ab ! Ab     ! right  ! -                 ! Yes: E is E G♯ B, A♭ is A♭ C E♭.
            common-tones ! G Ab ! nothing ! right ! -                 ! Yes, none: G is G B D, A♭ is A♭ C E♭.
            motion ! C3 E4 | F3 G4 ! parallel ! nearly ! direction-only     ! Nearly. The same way, yes. The lowest goes up from C3 to F3, the highest goes up from E4 to G4; the interval is a major tenth and then a major ninth. Do the letters keep their distance?
            motion ! C3 E4 | D3 F4 ! similar  ! nearly ! half-steps-counted ! Nearly. By half steps it is not the same. The lowest goes up from C3 to D3, the highest goes up from E4 to F4; the interval is a major tenth and then a minor tenth.
            motion ! C3 G4 | D3 F4 ! similar  ! wrong  ! wrong-way          ! Look again which way each goes. The lowest goes up from C3 to D3.
            motion ! C3 G3 E4 C5 | A2 A3 E4 C5 ! still ! wrong ! other-voices ! So move E4–E4 and C5–C5. The outer voices are C3–A2 and C5–C5.
            motion ! C3 E4 | C3 G4 ! in oblique motion ! right ! -          ! Yes. The lowest stays on C3, the highest goes up from E4 to G4: oblique.
            motion ! C3 E4 | C3 G4 ! contrary ! wrong ! -                   ! The lowest stays on C3, the highest goes up from E4 to G4.
            motion ! C3 E4 | C3 G4 ! sideways ! unreadable ! -              ! "sideways" is not a kind of motion: say contrary, oblique, similar, parallel or still. Example: contrary.
            """)
    void verdicts(String skill, String subject, String answer, String grade, String misconception, String message) {
        Verdict verdict = Asked.verdict(skill, subject, "C", answer);
        assertEquals(message, verdict.message().toString());
        assertEquals(grade, verdict.grade().toString());
        assertEquals(misconception, verdict.misconception());
    }

    @Test
    @DisplayName("what cannot be compared is refused")
    void refuses() {
        Unreadable three = assertThrows(Unreadable.class, () -> Asked.question("motion", "C3 E3 | D3 F3 | E3 G3", "C"));
        assertEquals(
                "\"C3 E3 | D3 F3 | E3 G3\" is not two voiced chords: two chords of two voices or more are compared."
                        + " Example: C3 G3 E4 C5 | A2 A3 E4 C5",
                three.getMessage());
        assertThrows(Unreadable.class, () -> Asked.question("motion", "C3 | D3", "C"));
        Unreadable alone = assertThrows(Unreadable.class, () -> Asked.question("motion", "C3 E3", "C"));
        assertEquals(
                "\"C3 E3\" is not a row of voiced chords: a bar line stands between two chords or more."
                        + " Example: C3 G3 E4 C5 | A2 A3 E4 C5",
                alone.getMessage());
    }

    @Test
    @DisplayName("the way to the answer lays the chords side by side")
    void derivation() {
        assertEquals(
                "F is F A C, A♭ is A♭ C E♭. In both: C. Hold that and move the rest.",
                Asked.question("common-tones", "F Ab", "C").derivation().toString());
    }
}
