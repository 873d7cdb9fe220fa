package monochord.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Each wrong procedure has words of its own, short enough for a list. */
class MisconceptionWordsTest {
    private static final int WIDEST = 48;

    @Test
    void eachHasWordsOfItsOwn() {
        Set<String> words = Arrays.stream(Misconception.values())
                .map(one -> one.words().toString())
                .collect(Collectors.toSet());
        assertEquals(Misconception.values().length, words.size());
        for (String one : words) {
            assertTrue(one.length() <= WIDEST && !one.endsWith("."), one);
        }
    }
}
