package monochord.shell.keyboard;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times in milliseconds; keys as MIDI note numbers, 60 is middle C. */
class GesturesTest {
    private final Gestures gestures = new Gestures();

    /** {@code 60@0 64@10 -60@500}: down at a time, up at a time. */
    private void plays(String keys) {
        for (String one : keys.split(" ")) {
            String[] parts = one.split("@");
            int key = Math.abs(Integer.parseInt(parts[0]));
            long at = Long.parseLong(parts[1]);
            if (parts[0].startsWith("-")) {
                gestures.release(key, at);
            } else {
                gestures.press(key, at);
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            a chord                             | 60@0 64@5 67@9 -60@400 -64@410 -67@440        | 440  | chord | 60 64 67
            let go finger by finger             | 60@0 64@5 67@9 -60@400 -64@900 -67@1500       | 1500 | chord | 60 64 67
            a slip put right while holding      | 60@0 64@0 68@0 -68@300 67@400 -60@900 -64@900 -67@900 | 900 | chord | 60 64 67
            short as a spark                    | 67@0 60@1 64@2 -60@20 -64@20 -67@20           | 20   | chord | 60 64 67
            two keys                            | 60@0 64@5 -60@400 -64@410                     | 410  | chord | 60 64
            the same key twice is one           | 60@0 60@50 64@60 67@60 -60@400 -64@400 -67@400 | 400  | chord | 60 64 67
            one key and a pause                 | 63@0 -63@200                                  | 1400 | line  | 63
            one after another                   | 60@0 -60@200 64@300 -64@500 67@600 -67@800    | 2000 | line  | 60 64 67
            a scale played legato               | 60@0 62@200 -60@220 64@400 -62@420 65@600 -64@620 -65@900 | 2100 | line | 60 62 64 65
            """)
    void gesturesAreToldWhenTheyAreOver(String what, String keys, long over, String kind, String expected) {
        plays(keys);
        if (kind.equals("line")) {
            assertEquals(Optional.empty(), gestures.over(over - 1), what);
        }
        Gesture told = gestures.over(over).orElseThrow();
        assertEquals(kind, told instanceof Gesture.KeysTogether ? "chord" : "line");
        assertEquals(
                List.of(expected.split(" ")),
                told.keys().stream().map(String::valueOf).toList());
        assertEquals(Optional.empty(), gestures.over(over + 5000), "told once");
    }

    @Test
    void aScaleThatHasComeHomeNeedsAShorterPause() {
        plays("60@0 -60@90 62@100 -62@190 64@200 -64@290 65@300 -65@390 67@400 -67@490 69@500 -69@590 71@600 -71@690");
        assertEquals(Optional.empty(), gestures.over(1800));
        plays("72@1800 -72@1900");
        assertEquals(Optional.empty(), gestures.over(2399));
        assertEquals(8, gestures.over(2400).orElseThrow().keys().size());
    }

    @Test
    void afterARestOnlyWhatIsPlayedAnewCounts() {
        plays("60@0 64@0 67@0");
        gestures.rest();
        plays("-60@100 -64@100 -67@100 62@300 -62@350");
        assertEquals(Optional.empty(), gestures.over(900));
        assertEquals(Optional.empty(), gestures.over(951));
        plays("65@1000 69@1000 72@1000 -65@1100 -69@1100 -72@1100");
        assertEquals(List.of(65, 69, 72), gestures.over(1101).orElseThrow().keys());
    }

    @Test
    void aKeyWhoseReleaseWasLostIsForgottenInTheEnd() {
        plays("48@0");
        plays("60@40000 64@40000 67@40000 -60@40300 -64@40300 -67@40300");
        assertEquals(List.of(60, 64, 67), gestures.over(40300).orElseThrow().keys());
        assertEquals(List.of(), gestures.down());
    }

    @Test
    void releasesOfKeysThatWereNotDownAndAllUpDoNoHarm() {
        plays("-60@0 -61@1");
        gestures.releaseAll(2);
        assertEquals(Optional.empty(), gestures.over(5000));
        plays("60@6000 64@6000 67@6000");
        gestures.releaseAll(6500);
        assertEquals(List.of(60, 64, 67), gestures.over(6500).orElseThrow().keys());
    }

    @Test
    void whatIsHeldIsToldOnceItIsSteady() {
        plays("60@0 64@30 67@60");
        assertEquals(Optional.empty(), gestures.steady(139));
        assertEquals(Optional.of(Set.of(60, 64, 67)), gestures.steady(140));
        assertEquals(Optional.empty(), gestures.steady(500));
        plays("-60@600 -64@600 -67@600");
        assertEquals(Optional.of(Set.of()), gestures.steady(680));
    }
}
