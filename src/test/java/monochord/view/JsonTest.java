package monochord.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Source: RFC 8259, The JavaScript Object Notation (JSON) Data Interchange Format, sections 2 to 8. */
class JsonTest {
    @Test
    void fieldsStandInTheOrderInWhichTheyWerePut() {
        Json json = new Json()
                .put("symbol", "Abmaj7")
                .put("signature", -4L)
                .put("bySound", false)
                .put("tones", List.of("Ab", "C"))
                .put("none", List.of())
                .put("misconception", (String) null)
                .objects("chords", List.of(1, 2), (object, at) -> object.put("at", (long) at));
        assertEquals(
                "{\"symbol\":\"Abmaj7\",\"signature\":-4,\"bySound\":false,\"tones\":[\"Ab\",\"C\"],\"none\":[],"
                        + "\"misconception\":null,\"chords\":[{\"at\":1},{\"at\":2}]}",
                json.toString());
        assertEquals("{}", new Json().toString());
    }

    @Test
    void quotesBackslashesAndControlCharactersAreEscaped() {
        assertEquals(
                "{\"a\\\"b\\\\c\":\"\\n\\t\\u000d\\u0000\\u001b\\u007f/\"}",
                new Json().put("a\"b\\c", "\n\t\r\0\33\177/").toString());
    }

    @Test
    void marksThatTurnTextRoundAreEscaped() {
        assertEquals(
                "{\"x\":\"\\u202e\\u009b\\ufeff\"}",
                new Json().put("x", "\u202e\u009b\ufeff").toString());
    }

    @Test
    void lineSeparatorsAndHalvesOfSurrogatePairsAreEscaped() {
        assertEquals(
                "{\"x\":\"\\u2028\\u2029\\ud834\\udd2a\\udd2a\\ud834\"}",
                new Json().put("x", "\u2028\u2029𝄪\uDD2A\uD834").toString());
        assertEquals("{\"x\":\"♭é\"}", new Json().put("x", "♭é").toString());
    }

    @Test
    void everyCharacterComesBack() {
        for (int c = 0; c <= 0xFFFF; c++) {
            String text = "a" + (char) c + "b";
            String line = new Json().put("x", text).toString();
            assertEquals(Map.of("x", text), StrictJson.read(line));
            assertTrue(line.chars().noneMatch(Character::isISOControl), line);
        }
    }

    @Test
    void everyKindOfFieldComesBack() {
        Map<String, Object> expected = new LinkedHashMap<>();
        expected.put("one", Long.MIN_VALUE);
        expected.put("two", true);
        expected.put("three", List.of("", "\""));
        expected.put("four", null);
        expected.put("five", List.of(Map.of("six", List.of()), Map.of("six", List.of("x"))));
        String line = new Json()
                .put("one", Long.MIN_VALUE)
                .put("two", true)
                .put("three", List.of("", "\""))
                .put("four", (String) null)
                .objects("five", List.of(List.of(), List.of("x")), (object, six) -> object.put("six", six))
                .toString();
        assertEquals(expected, StrictJson.read(line));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "{}x",
                "{\"a\"}",
                "{\"a\":}",
                "{\"a\":1,}",
                "{\"a\":1 }",
                "{a:1}",
                "{\"a\":01}",
                "{\"a\":+1}",
                "{\"a\":\"\n\"}",
                "{\"a\":\"\\x\"}",
                "{\"a\":tru}",
                "{\"a\":1,\"a\":2}",
                "['a']",
                "[1,]",
                "\"\uD834\""
            })
    void theReaderOfTheseTestsRefusesWhatIsNotJson(String text) {
        assertThrows(AssertionError.class, () -> StrictJson.read(text));
    }
}
