package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.harmony.MusicText;
import monochord.harmony.Progression;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source. */
class PieceTest {
    private static final Key C = Key.parse("C");

    private static Piece chords(String text) {
        return Arrangement.piece(MusicText.read(text, C));
    }

    private static Piece over(String tune, String chords) {
        return Piece.of(Melody.parse(tune), Progression.parse(chords, C));
    }

    private static String notes(Score score, Hand hand) {
        return score.soundings().stream()
                .filter(one -> one.hand() == hand)
                .map(one -> one.start() + " " + one.pitch())
                .collect(Collectors.joining(", "));
    }

    @Test
    void aTuneLiesOverItsChords() {
        Score score = over("E4:2 D4:2", "C G").as(Pattern.BLOCK, 1);
        assertEquals("0 E4, 2 D4", notes(score, Hand.TUNE));
        assertEquals("0 C3, 2 G2", notes(score, Hand.LEFT));
        assertEquals(Beats.of(4), score.beats());
    }

    @Test
    void aPickUpComesBeforeTheFirstChord() {
        Score score = over("G4 | C5:4 |", "| C |").as(Pattern.BLOCK, 1);
        assertEquals("0 G4, 1 C5", notes(score, Hand.TUNE));
        assertEquals("1 C3", notes(score, Hand.LEFT));
    }

    @Test
    void aPickUpThatComesAgainFallsIntoTheLastBar() {
        Score score = over("G4 | C5:4 | C5:3 |", "| C | C |").as(Pattern.BLOCK, 2);
        assertEquals("0 G4, 1 C5, 5 C5, 8 G4, 9 C5, 13 C5", notes(score, Hand.TUNE));
        assertEquals("1 C3, 5 C3, 9 C3, 13 C3", notes(score, Hand.LEFT));
    }

    @Test
    void theChordsGoRoundUntilTheTuneIsOver() {
        Piece piece = over("C5:4 C5:4 C5:1", "C G");
        assertEquals(6, piece.voicings().size());
        assertEquals(Beats.of(12), piece.beats());
    }

    @Test
    void playsAsOftenAsIsSaid() {
        Score score = chords("C G").as(Pattern.BLOCK, 3);
        assertEquals("0 C3, 2 G2, 4 C3, 6 G2, 8 C3, 10 G2", notes(score, Hand.LEFT));
        assertEquals(
                "a piece is played at least once, not 0 times",
                assertThrows(IllegalArgumentException.class, () -> chords("C").as(Pattern.BLOCK, 0))
                        .getMessage());
    }

    @Test
    void inThreeEachWrittenBarHasThreeBeatsAndEachLooseChordABar() {
        BarGrid three = BarGrid.parse("3/4");
        assertEquals(
                Beats.of(6),
                Arrangement.piece(MusicText.read("| C G | F |", C), three).beats());
        assertEquals(
                Beats.of(9),
                Arrangement.piece(MusicText.read("C G F", C), three).beats());
        assertEquals(Beats.of(6), chords("C G F").beats());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            left hand  | C3, G2
            right hand | C4 E4 G4, B3 D4 G4
            bass       | C3, G2
            tenor      | C4, B3
            alto       | E4, D4
            top        | G4, G4
            both hands | C3 C4 E4 G4, G2 B3 D4 G4
            """)
    void aPartIsHeardAlone(String part, String keys) {
        Piece piece = HeardPart.named(part).orElseThrow().of(chords("C G")).orElseThrow();
        assertEquals(
                keys,
                piece.voicings().stream()
                        .map(voicing -> voicing.hands().pitches().stream()
                                .map(Object::toString)
                                .collect(Collectors.joining(" ")))
                        .collect(Collectors.joining(", ")));
    }

    @Test
    void aTuneAndItsChordsCanBeParted() {
        Piece piece = over("E4:2 D4:2", "C G");
        assertTrue(HeardPart.TUNE.of(piece).orElseThrow().voicings().isEmpty());
        assertTrue(HeardPart.CHORDS.of(piece).orElseThrow().line().isEmpty());
        assertEquals(Optional.empty(), HeardPart.TUNE.of(chords("C G")));
        assertEquals(Optional.empty(), HeardPart.LEFT_HAND.of(chords("C major")));
        for (HeardPart part : HeardPart.values()) {
            assertEquals(Optional.of(part), HeardPart.named(part.toString()));
        }
        assertTrue(HeardPart.named("C").isEmpty());
    }

    /** An eighth off the beat comes a third of a beat before the next beat. */
    @ParameterizedTest(name = "{0} from {1} on becomes {2}")
    @CsvSource(delimiter = '|', textBlock = """
            C4:1/2 D4:1/2 E4:1   | 0   | 0 C4, 2/3 D4, 1 E4
            C4:1/4 D4:1/4 E4:1/2 | 0   | 0 C4, 1/3 D4, 2/3 E4
            C4:1 D4:3/2 E4:1/2   | 0   | 0 C4, 1 D4, 8/3 E4
            C4:1/2 D4:1 E4:1/2   | 1/2 | 0 C4, 1/3 D4, 4/3 E4
            """)
    void swings(String tune, String pickup, String swung) {
        Score plain = Piece.of(Melody.parse(tune)).as(Pattern.BLOCK, 1);
        assertEquals(swung, notes(Swing.of(plain, Beats.parse(pickup)), Hand.TUNE));
    }

    @Test
    void swingChangesNeitherWholeBeatsNorLabelsNorPedals() {
        Score plain = chords("| C F | G |").as(Pattern.BROKEN, 2);
        Score swung = Swing.of(plain, Beats.ZERO);
        assertEquals(plain.beats(), swung.beats());
        assertEquals(plain.captions(), swung.captions());
        assertEquals(plain.pedals(), swung.pedals());
        assertEquals(plain.soundings().size(), swung.soundings().size());
    }

    @Test
    void readsAMetre() {
        assertEquals(Beats.of(3), BarGrid.parse("6/8").bar());
        assertEquals(Beats.of(4), BarGrid.parse("2/2").bar());
        for (String wrong : List.of("", "3", "3/5", "0/4", "99/4", "3/4 ")) {
            assertEquals(
                    "\"" + wrong.strip() + (wrong.endsWith(" ") ? " " : "")
                            + "\" is not a metre: expected beats and their value such as 3/4 or 6/8. Example: 3/4",
                    assertThrows(Unreadable.class, () -> BarGrid.parse(wrong)).getMessage());
        }
    }
}
