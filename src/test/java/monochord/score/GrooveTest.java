package monochord.score;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import monochord.harmony.MusicText;
import monochord.harmony.voicing.Voicing;
import monochord.theory.Key;
import monochord.theory.note.Beats;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Common practice, no source: what a band means by these words. */
class GrooveTest {
    private static final Key C = Key.parse("C");
    private static final BarGrid THREE = BarGrid.parse("3/4");

    /** Start, keys bottom to top, length, of one hand. */
    private static String hand(Hand hand, Score score) {
        return score.soundings().stream()
                .filter(one -> one.hand() == hand)
                .collect(Collectors.groupingBy(Sounding::start))
                .entrySet()
                .stream()
                .sorted(java.util.Map.Entry.comparingByKey())
                .map(entry -> entry.getKey() + " "
                        + entry.getValue().stream()
                                .sorted(Comparator.comparing(Sounding::pitch))
                                .map(one -> one.pitch().toString())
                                .collect(Collectors.joining("+"))
                        + ":" + entry.getValue().get(0).length())
                .collect(Collectors.joining(", "));
    }

    private static Score played(String music, Pattern pattern, BarGrid metre) {
        return Arrangement.piece(MusicText.read(music, C), metre).as(pattern, 1);
    }

    private static String left(String music, Pattern pattern, BarGrid metre) {
        return hand(Hand.LEFT, played(music, pattern, metre));
    }

    private static String right(String music, Pattern pattern, BarGrid metre) {
        return hand(Hand.RIGHT, played(music, pattern, metre));
    }

    @Test
    void aWaltzGoesToTheFifthWhereAChordStaysForAnotherBar() {
        assertEquals(
                "0 C3:1, 3 G2:1, 6 F2:1",
                left("C | . | F", Pattern.WALTZ, THREE).replace("3 G3", "3 G2"));
        assertEquals("1 C4+F4+A4:1/2, 2 C4+F4+A4:1/2", right("F", Pattern.WALTZ, THREE));
    }

    @Test
    void offBeatsFallBetweenTheBeats() {
        assertEquals("0 F2:1, 2 F2:1", left("F", Pattern.OFF_BEATS, BarGrid.COMMON));
        assertEquals(
                "1/2 C4+F4+A4:1/4, 3/2 C4+F4+A4:1/4, 5/2 C4+F4+A4:1/4, 7/2 C4+F4+A4:1/4",
                right("F", Pattern.OFF_BEATS, BarGrid.COMMON));
    }

    @Test
    void aBalladBreaksRootFifthAndOctaveBelowAHeldChord() {
        assertEquals(
                "0 F2:1/2, 1/2 C3:1/2, 1 F3:1/2, 3/2 C3:1/2, 2 F3:1/2, 5/2 C3:1/2, 3 F3:1/2, 7/2 C3:1/2",
                left("F", Pattern.BALLAD, BarGrid.COMMON));
        assertEquals("0 C4+F4+A4:4", right("F", Pattern.BALLAD, BarGrid.COMMON));
        assertEquals(
                "0 F2:1/2, 1/2 C3:1/2, 1 F3:1/2, 3/2 F2:1/2, 2 C3:1/2, 5/2 F3:1/2",
                left("F", Pattern.BALLAD, BarGrid.parse("6/8")));
    }

    @Test
    void aBossaHasRootAndFifthBelowARhythmOfTwoBars() {
        assertEquals("0 F2:3/2, 3/2 C3:1/2, 2 C3:3/2, 7/2 F2:1/2", left("F", Pattern.BOSSA, BarGrid.COMMON));
        String chord = " C4+F4+A4:";
        assertEquals(
                "0" + chord + "3/4, 3/2" + chord + "1, 3" + chord + "1/2, 5" + chord + "3/4, 13/2" + chord + "1",
                right("| F | . |", Pattern.BOSSA, BarGrid.COMMON));
    }

    @Test
    void aPushedChordComesAnEighthBeforeItsBar() {
        assertEquals(
                "0 C4+F4+A4:1, 1 C4+F4+A4:1/2, 5/2 C4+F4+A4:3/4, 7/2 C4+E4+G4:5/4, 5 C4+E4+G4:1/2, 13/2 C4+E4+G4:3/4",
                right("| F | C |", Pattern.PUSH, BarGrid.COMMON));
        assertTrue(left("| F | C |", Pattern.PUSH, BarGrid.COMMON).contains("4 C"), "the bass waits for the bar");
    }

    @Test
    void aWalkingBassLeadsIntoEachChord() {
        assertEquals(
                "0 D2:1, 1 F2:1, 2 A2:1, 3 F#2:1, 4 G2:1, 5 F2:1, 6 D2:1, 7 B1:1, 8 C2:4",
                left("| Dm7 | G7 | C |", Pattern.WALKING, BarGrid.COMMON));
    }

    @ParameterizedTest
    @CsvSource({
        "WALTZ, 4/4, false",
        "WALTZ, 3/4, true",
        "WALTZ, 6/8, false",
        "BOSSA, 4/4, true",
        "BOSSA, 3/4, false",
        "PUSH, 2/2, true",
        "WALKING, 6/8, false",
        "WALKING, 3/4, true",
        "BALLAD, 6/8, true",
        "OFF_BEATS, 12/8, false"
    })
    void eachIsPlayedInTheBarsThatItFits(Pattern pattern, String metre, boolean fits) {
        assertEquals(fits, pattern.fits(BarGrid.parse(metre)));
    }

    /** Laws for all: as long as it was, captions as they were, each chord is heard, no key is struck while it is down. */
    @ParameterizedTest
    @EnumSource(Pattern.class)
    void eachPlaysAllOfItAndNamesIt(Pattern pattern) {
        BarGrid metre = pattern.usualMetre();
        Piece piece = Arrangement.piece(MusicText.read("| Dm7 . G7 . | Cmaj7 | Am | . | F C/E G |", C), metre);
        Score block = piece.as(Pattern.BLOCK, 1);
        Score score = piece.as(pattern, 1);
        assertEquals(block.beats(), score.beats());
        assertEquals(block.captions(), score.captions());
        List<Sounding> all = score.soundings();
        for (Caption caption : block.captions()) {
            Beats end = caption.start().plus(caption.length());
            assertTrue(
                    all.stream()
                            .anyMatch(one ->
                                    one.hand() == Hand.LEFT && one.start().equals(caption.start())),
                    pattern + " has no bass at " + caption);
            assertTrue(
                    all.stream()
                            .anyMatch(one -> one.hand() == Hand.RIGHT
                                    && one.start().compareTo(end) < 0
                                    && one.end().compareTo(caption.start()) > 0),
                    pattern + " has no chord in " + caption);
        }
        for (Sounding one : all) {
            assertTrue(one.end().compareTo(score.beats()) <= 0);
            assertTrue(
                    all.stream()
                            .noneMatch(other -> other != one
                                    && other.hand() == one.hand()
                                    && other.pitch().equals(one.pitch())
                                    && other.start().compareTo(one.start()) > 0
                                    && other.start().compareTo(one.end()) < 0),
                    pattern + " strikes " + one + " twice");
        }
    }

    @Test
    void whatTheLeftHandHoldsAboveItsBassIsStruckWithTheChord() {
        Voicing hands = Voicing.parse("F2 C3 | A3 F4");
        Score score = Pattern.OFF_BEATS.of(List.of(new TimedVoicing(hands, Beats.of(2), "F")), BarGrid.COMMON);
        assertEquals("0 F2:1, 1/2 C3:1/4, 3/2 C3:1/4", hand(Hand.LEFT, score));
        assertEquals(
                List.of(Pitch.parse("F2")),
                score.soundings().stream()
                        .filter(one -> one.start().isZero())
                        .map(Sounding::pitch)
                        .toList());
    }
}
