package monochord.harmony.key;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.melody.Melody;
import monochord.theory.Key;
import org.junit.jupiter.api.Test;

/** Tunes long in the public domain and their keys. Source: the first line of the table. */
class KeyOfTunesTest {
    private static final List<String[]> TUNES = Counted.rows("/monochord/harmony/key/tunes-and-keys.csv");

    private static KeyFinding find(String[] row) {
        return KeyFinding.of(Melody.parse(row[3]), Counted.KEYS);
    }

    /** Tonic and mode. */
    @Test
    void findsTheKeyOfNearlyEveryTune() {
        List<String> wrong = new ArrayList<>();
        for (String[] row : TUNES) {
            Key found = find(row).key();
            if (!found.equals(Key.parse(row[1]))) {
                wrong.add(row[0] + ": " + row[1] + ", found " + found + " "
                        + find(row).keys());
            }
        }
        assertTrue(TUNES.size() >= 45, () -> TUNES.size() + " tunes");
        assertTrue(wrong.size() * 100 <= TUNES.size() * 7, wrong::toString);
    }
}
