package monochord.shell.sentence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import monochord.theory.note.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeNumberTest {
    private static final String EXAMPLE = "sheet questions triad-spelling count 12";

    @Test
    void readsWhatIsInBounds() {
        assertEquals(1, WholeNumber.count("1", 60, EXAMPLE));
        assertEquals(60, WholeNumber.count("60", 60, EXAMPLE));
        assertEquals(-7, WholeNumber.seed("-7"));
        assertEquals(Long.MAX_VALUE, WholeNumber.seed("9223372036854775807"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "61", "-1", "1.5", "ten", "99999"})
    void saysWhichNumbersThereAre(String text) {
        Unreadable refused = assertThrows(Unreadable.class, () -> WholeNumber.count(text, 60, EXAMPLE));
        assertEquals(
                "\"" + text + "\" is not a number: expected a whole number from 1 to 60. Example: " + EXAMPLE,
                refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "1.5", "9223372036854775808"})
    void saysWhatASeedIs(String text) {
        Unreadable refused = assertThrows(Unreadable.class, () -> WholeNumber.seed(text));
        assertEquals(
                "\"" + text + "\" is not a seed: expected a whole number. Example: --seed 7", refused.getMessage());
    }
}
