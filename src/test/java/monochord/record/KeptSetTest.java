package monochord.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import monochord.practice.drill.Tally;
import monochord.practice.mastery.SkillInKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A day's set that was cut off is found again. */
class KeptSetTest {
    private static final long HOUR = 60 * 60 * 1000;
    private static final KeptSet CUT_OFF = new KeptSet(
            5 * HOUR,
            List.of(new SkillInKey("interval", "D major"), new SkillInKey("borrowed-chord", "Eb major")),
            new Tally(4, 3),
            new Tally(9, 6));

    @TempDir
    private Path home;

    @Test
    void readsAllThatItWrites() {
        CUT_OFF.write(home);
        assertEquals(CUT_OFF, KeptSet.read(home));
    }

    @Test
    void goesOnOnTheSameDayOnly() {
        assertTrue(CUT_OFF.isUnderWay(6 * HOUR));
        assertFalse(CUT_OFF.isUnderWay(30 * HOUR));
        assertFalse(CUT_OFF.isUnderWay(4 * HOUR), "the clock was set back");
        assertFalse(KeptSet.NONE.isUnderWay(0));
    }

    @Test
    void theLastSetIsOneInWhichSomethingWasAnswered() {
        assertEquals(new Tally(4, 3), CUT_OFF.last());
        assertEquals(new Tally(9, 6), new KeptSet(0, List.of(), Tally.NONE, new Tally(9, 6)).last());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "monochord set 1", "monochord set 1\nbegun x", "monochord set 1\nbegun 1 2 3 4 5\nahead", "x"
            })
    void aDamagedFileIsNoSet(String text) throws IOException {
        Files.writeString(home.resolve("set"), text);
        assertEquals(KeptSet.NONE, KeptSet.read(home));
    }
}
