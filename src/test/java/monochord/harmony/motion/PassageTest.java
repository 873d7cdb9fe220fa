package monochord.harmony.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import monochord.theory.note.Pitch;
import monochord.theory.note.Signs;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chords written as pitches between bars. Source: our own text form. */
class PassageTest {
    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 G3 E4 C5 | A2 A3 E4 C5      ! C3 G3 E4 C5 | A2 A3 E4 C5
            c3,g3|a2, a3                   ! C3 G3 | A2 A3
            '| C3 | D3 |'                  ! C3 | D3
            A♭3 C-1 | F𝄪4 B𝄫3 | Ebb4      ! Ab3 C-1 | F##4 Bbb3 | Ebb4
            """)
    void reads(String text, String written) {
        Passage passage = Passage.parse(text);
        assertEquals(written, passage.toString());
        assertEquals(passage, Passage.parse(passage.toString()));
        assertEquals(passage, Passage.parse(passage.write(Signs.MUSIC)));
    }

    @ParameterizedTest(name = "{0} at {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 E3            ! 5 ! "C3 E3" is not a row of voiced chords: a bar line stands between two chords or more. Example: C3 G3 E4 C5 | A2 A3 E4 C5
            ''               ! 0 ! "" is not a row of voiced chords: a bar line stands between two chords or more. Example: C3 G3 E4 C5 | A2 A3 E4 C5
            C3 || D3         ! 4 ! "C3 || D3" is not a row of voiced chords: there is no chord between two bar lines. Example: C3 G3 E4 C5 | A2 A3 E4 C5
            C3 | H3          ! 5 ! "H3" is not a pitch: expected a letter from A to G at character 1, found 'H'. Example: Ab3
            C3 E | D3 F3     ! 4 ! "E" is not a pitch: expected an octave from -1 to 10 at character 2, found the end. Example: Ab3
            C3 | D11         ! 6 ! "D11" is not a pitch: the octave must be from -1 to 10. Example: Ab3
            C3 C3 C3 C3 C3 C3 C3 C3 C3 C3 C3 | D3 ! 30 ! "C3 C3 C3 C3 C3 C3 C3 C3 C3 C3 C3 | D3" is not a row of voiced chords: a chord here has at most 10 voices. Example: C3 G3 E4 C5 | A2 A3 E4 C5
            """)
    void refuses(String text, int place, String message) {
        Unreadable refusal = assertThrows(Unreadable.class, () -> Passage.parse(text));
        assertEquals(message, refusal.getMessage());
        assertEquals(place, refusal.place());
    }

    @ParameterizedTest(name = "\"{0}\" is written in pitches: {1}")
    @CsvSource(delimiter = '!', textBlock = """
            C3 G3 | A2 E3     ! true
            C3 G3             ! true
            C2 G2 | D2 A2     ! true
            C5 G5 | D5 A5     ! true
            C4 H | D4         ! true
            F C G Ab          ! false
            F7 Bb7 | C7 F7    ! false
            C6 A7 | D9 G7     ! false
            C5 | D5 | F5      ! false
            C5 G5 D5          ! false
            4 1 5 b6          ! false
            IV | V            ! false
            C2 G2 | Dm A2     ! false
            """)
    void tellsPitchesFromChordSymbols(String text, boolean pitches) {
        assertEquals(pitches, Passage.isWrittenIn(text));
    }

    @Test
    @DisplayName("512 chords of ten voices are read and judged, one more is refused")
    void bounds() {
        String chord = "C2 G2 C3 E3 G3 C4 E4 G4 C5 E5";
        String most = (chord + " | ").repeat(Passage.MOST_CHORDS);
        Passage passage = Passage.parse(most);
        assertEquals(512, passage.chords().size());
        assertEquals(List.of(), Strictness.CHORALE.judge(passage));
        Unreadable refusal = assertThrows(Unreadable.class, () -> Passage.parse(most + "C3"));
        assertTrue(refusal.getMessage().contains("at most 512 chords"), refusal::getMessage);
        assertThrows(Unreadable.class, () -> Passage.parse("C3 ".repeat(1_000_000)));
        assertThrows(Unreadable.class, () -> Passage.parse("|".repeat(1_000_000)));
    }

    @Test
    @DisplayName("whatever stands there, it is read or refused with a place in it")
    void anyText() {
        String[] pieces = {
            "C", "3", "b", "#", "x", "|", " ", ",", "-", "4", "10", "♭", "𝄫", "H", "\u001b", "\ud83d", "é"
        };
        SplittableRandom random = new SplittableRandom(7);
        int read = 0;
        for (int i = 0; i < 100_000; i++) {
            StringBuilder text = new StringBuilder(i % 3 == 0 ? "C3 | D3" : "");
            for (int j = random.nextInt(12); j > 0; j--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            Passage.isWrittenIn(text.toString());
            read += reads(text.toString()) ? 1 : 0;
        }
        assertTrue(read > 1000, "only " + read);
    }

    private static boolean reads(String text) {
        try {
            Passage passage = Passage.parse(text);
            Strictness.BAND.judge(passage);
            return true;
        } catch (Unreadable refusal) {
            assertTrue(refusal.place() >= 0 && refusal.place() <= text.length(), text);
            return false;
        }
    }

    @Test
    @DisplayName("a passage has two chords, and a note in each")
    void slips() {
        List<Pitch> c = List.of(Pitch.parse("C3"));
        assertThrows(IllegalArgumentException.class, () -> new Passage(List.of(c)));
        assertThrows(IllegalArgumentException.class, () -> new Passage(List.of(c, List.of())));
    }
}
