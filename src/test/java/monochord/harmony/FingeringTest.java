package monochord.harmony;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.theory.Key;
import monochord.theory.Scale;
import monochord.theory.note.Pitch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a hand can do on the keys; common practice, no source. */
class FingeringTest {
    private static final List<Integer> BLACK = List.of(1, 3, 6, 8, 10);

    static Stream<Scale> scales() {
        return Stream.concat(
                Key.majorKeys().stream().map(key -> Scale.parse(key.tonic() + " major")),
                Key.minorKeys().stream().map(key -> Scale.parse(key.tonic() + " harmonic minor")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("scales")
    void noThumbFallsOnABlackKeyAndNoFingerPlaysTwiceInARow(Scale scale) {
        Fingering hands = Fingering.of(scale).orElseThrow();
        List<Pitch> pitches = scale.pitches(Pitch.parse("C4"));
        for (List<Integer> hand : List.of(hands.right(), hands.left())) {
            assertEquals(8, hand.size());
            for (int i = 0; i < hand.size(); i++) {
                int finger = hand.get(i);
                assertTrue(finger >= 1 && finger <= 5, hand::toString);
                boolean black = BLACK.contains(pitches.get(i).midiNumber() % 12);
                assertTrue(finger != 1 || !black, hand + " on " + pitches);
                if (i > 0) {
                    assertNotEquals(hand.get(i - 1), finger);
                }
            }
        }
    }

    /** Upwards the right hand goes finger by finger or puts its thumb under; the left crosses over its thumb. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("scales")
    void handsGoOnOnlyOverTheThumb(Scale scale) {
        Fingering hands = Fingering.of(scale).orElseThrow();
        for (int i = 1; i < 8; i++) {
            int right = hands.right().get(i);
            int left = hands.left().get(i - 1);
            assertTrue(right == 1 || right == hands.right().get(i - 1) + 1, hands.right()::toString);
            assertTrue(left == 1 || left == hands.left().get(i) + 1, hands.left()::toString);
        }
    }

    /** From memory. */
    @ParameterizedTest
    @CsvSource({
        "C major, 12312345, 54321321",
        "F major, 12341234, 54321321",
        "Bb major, 21231234, 32143213",
        "B major, 12312345, 43214321",
        "A harmonic minor, 12312345, 54321321",
        "Eb harmonic minor, 31234123, 21432132",
    })
    void theUsualFingers(String scale, String right, String left) {
        Fingering hands = Fingering.of(Scale.parse(scale)).orElseThrow();
        assertEquals(right, row(hands.right()));
        assertEquals(left, row(hands.left()));
    }

    private static String row(List<Integer> fingers) {
        return String.join("", fingers.stream().map(String::valueOf).toList());
    }

    @Test
    void noFingersAreMadeUp() {
        assertEquals(Optional.empty(), Fingering.of(Scale.parse("C dorian")));
    }
}
