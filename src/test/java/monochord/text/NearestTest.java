package monochord.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import monochord.shell.verb.Verbs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    @ParameterizedTest(name = "{0} means {1}")
    @CsvSource({
        "shw, show", "SHOW, show", "shoow, show", "plya, play", "borow, borrow", "brorow, borrow",
                "transpos, transpose",
        "trnaspoe, transpose", "numerals, numeral", "lern, learn", "hepl, help", "quti, quit", "tel, tell", "xhow, show"
    })
    void aSlipOfTheFingerFindsItsVerb(String typed, String verb) {
        assertEquals(Optional.of(verb), Nearest.to(typed, new Verbs().words()));
    }

    @ParameterizedTest(name = "{0} means no verb")
    @CsvSource({"music", "xyz", "Abmaj7", "C", "Am", "IV", "viio7", "G7sus4", "4", "b6", "D", "Bdim", "F#m7b5", "E/G#"})
    void musicAndOtherWordsFindNone(String typed) {
        assertEquals(Optional.empty(), Nearest.to(typed, new Verbs().words()));
    }

    @Test
    void nothingAndVeryLongWordsFindNone() {
        assertEquals(Optional.empty(), Nearest.to("", List.of("show")));
        assertEquals(Optional.empty(), Nearest.to("s".repeat(61), List.of("s".repeat(61))));
        assertEquals(Optional.of("s".repeat(60)), Nearest.to("s".repeat(60), List.of("s".repeat(60))));
    }

    @Test
    void theNearestOfSeveralWins() {
        assertEquals(Optional.of("tell"), Nearest.to("tel", List.of("stop", "tell", "hell")));
    }
}
