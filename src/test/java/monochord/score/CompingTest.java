package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import monochord.theory.note.Beats;
import monochord.theory.note.NoteName;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Source: common practice, no source; worked out by hand at the keyboard from the rules in LeftHand and RightHand. */
class CompingTest {
    /** {@code "G/B: G B D"} or {@code "F A C"}, root first. */
    static HeldChord change(String text) {
        String tones = text.substring(text.indexOf(':') + 1).strip();
        List<NoteName> names =
                Arrays.stream(tones.split(" ")).map(NoteName::parse).toList();
        NoteName bass = text.contains("/")
                ? NoteName.parse(text.substring(text.indexOf('/') + 1, text.indexOf(':')))
                : names.get(0);
        return new HeldChord(bass, names, Beats.of(2), "");
    }

    private static List<HeldChord> changes(String text) {
        return Arrays.stream(text.split(","))
                .map(String::strip)
                .map(CompingTest::change)
                .toList();
    }

    private static String written(List<Pitch> keys) {
        return keys.stream().map(Pitch::toString).collect(Collectors.joining(" "));
    }

    @Test
    void playsFourOneFiveFlatSixFiveOneInC() {
        List<TimedVoicing> voicings = Comping.voicings(changes("F A C, C E G, G B D, Ab C Eb, G B D, C E G"));
        assertEquals(
                List.of(
                        "F2 | C4 F4 A4",
                        "C2 | C4 E4 G4",
                        "G2 | B3 D4 G4",
                        "Ab2 | C4 Eb4 Ab4",
                        "G2 | B3 D4 G4",
                        "C3 | C4 E4 G4"),
                voicings.stream()
                        .map(voicing -> written(voicing.hands().left()) + " | "
                                + written(voicing.hands().right()))
                        .toList());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            D F A C, G B D F, C E G B        | C4 D4 F4 A4, B3 D4 F4 G4, B3 C4 E4 G4
            C E G, C E G Bb, F A C           | C4 E4 G4, Bb3 C4 E4 G4, A3 C4 F4
            C E G, A C E, F A C, G B D       | C4 E4 G4, C4 E4 A4, C4 F4 A4, B3 D4 G4
            C E G, F Ab C, C E G             | C4 E4 G4, C4 F4 Ab4, C4 E4 G4
            G C D, G B D                     | C4 D4 G4, B3 D4 G4
            Cb Eb Gb, Fb Ab Cb               | Cb4 Eb4 Gb4, Cb4 Fb4 Ab4
            C E G, C E G, C E G              | C4 E4 G4, C4 E4 G4, C4 E4 G4
            """)
    void theRightHandMovesToTheNearestPosition(String chords, String expected) {
        List<String> keys = RightHand.follow(changes(chords)).stream()
                .map(CompingTest::written)
                .toList();
        assertEquals(expected, String.join(", ", keys));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            C D E F G A B             | C3 D3 E3 F2 G2 A2 B2
            A D G C                   | A2 D3 G2 C3
            C B A G F E               | C3 B2 A2 G2 F2 E2
            C E                       | C3 E3
            F C                       | F2 C2
            F B                       | F2 B2
            Cb                        | Cb3
            B#                        | B#2
            """)
    void theBassGoesToTheNearestOctave(String names, String expected) {
        List<NoteName> basses =
                Arrays.stream(names.split(" ")).map(NoteName::parse).toList();
        assertEquals(expected, written(LeftHand.follow(basses)));
    }

    @ParameterizedTest(name = "{0} is played as {1}")
    @CsvSource(delimiter = '|', textBlock = """
            C E G Bb D            | C E G Bb D
            C E G Bb D F          | C E Bb D F
            C E G Bb D A          | C E Bb D A
            C E G Bb D F A        | C E Bb D A
            C Eb G Bb D F A       | Eb Bb D F A
            C E Gb Bb Db F Ab     | E Gb Bb Db Ab
            C/E: C E G Bb D F A   | C E Bb D A
            C/Bb: C Eb G Bb D F A | C Eb D F A
            C/D: C Eb G Bb Db F A | Eb Bb Db F A
            C E Gb Bb F#          | C E Gb Bb
            """)
    void aFullChordIsThinnedToFiveNotes(String chord, String played) {
        assertEquals(
                played,
                RightHand.tones(change(chord)).stream().map(NoteName::toString).collect(Collectors.joining(" ")));
    }

    @Test
    void aVoicingSoundsInBothHandsUnderItsLabel() {
        HeldChord change = new HeldChord(NoteName.parse("Ab"), change("Ab C Eb").tones(), Beats.of(4), "Ab");
        Score score = Comping.of(List.of(change));
        assertEquals(
                List.of("Ab2 LEFT 4 Ab", "C4 RIGHT 4 Ab", "Eb4 RIGHT 4 Ab", "Ab4 RIGHT 4 Ab"),
                score.soundings().stream()
                        .map(s -> s.pitch() + " " + s.hand() + " " + s.length() + " " + s.label())
                        .toList());
        assertEquals(List.of(new Caption("Ab", Beats.ZERO, Beats.of(4))), score.captions());
    }

    @Test
    void noChangesAreNoMusic() {
        assertEquals(Beats.ZERO, Comping.of(List.of()).beats());
    }

    @Test
    void aChangeNeedsTonesAndALength() {
        assertThrows(IllegalArgumentException.class, () -> new HeldChord(NoteName.C, List.of(), Beats.ONE, ""));
        assertThrows(
                IllegalArgumentException.class, () -> new HeldChord(NoteName.C, List.of(NoteName.C), Beats.ZERO, ""));
    }
}
