package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import monochord.shell.playback.Breaks;
import org.junit.jupiter.api.Test;

/** Half an hour with no pause of five minutes: common practice, no source. Times in minutes. */
class BreaksTest {
    private static final long MINUTE_MILLIS = 60_000;

    private long now = 1_000_000;
    private final Breaks breaks = new Breaks(() -> now);

    /** Works on for so many minutes, something in each, and lists the minutes in which a rest was due. */
    private List<Integer> workingOn(int minutes) {
        List<Integer> due = new ArrayList<>();
        for (int minute = 0; minute <= minutes; minute++) {
            if (breaks.isDue()) {
                due.add(minute);
            }
            now += MINUTE_MILLIS;
        }
        return due;
    }

    @Test
    void aRestIsDueEachHalfHour() {
        assertEquals(List.of(30, 60, 90), workingOn(100));
    }

    @Test
    void aPauseBeginsAnew() {
        assertEquals(List.of(), workingOn(29));
        now += 5 * MINUTE_MILLIS;
        assertEquals(List.of(30), workingOn(40));
    }

    @Test
    void aShorterPauseDoesNot() {
        assertEquals(List.of(), workingOn(24));
        now += 3 * MINUTE_MILLIS;
        assertEquals(List.of(2), workingOn(10));
    }

    /** Lines that ask for nothing count as well: whoever only plays chords by name is at work too. */
    @Test
    void linesAndKeysShareOneClock() {
        for (int minute = 0; minute < 30; minute++) {
            breaks.note();
            now += MINUTE_MILLIS;
        }
        assertTrue(breaks.isDue());
        assertFalse(breaks.isDue());
    }

    @Test
    void aClockThatWasSetBackBeginsAnew() {
        assertEquals(List.of(), workingOn(20));
        now -= 600 * MINUTE_MILLIS;
        assertEquals(List.of(30), workingOn(30));
    }

    @Test
    void saysWhatToDo() {
        assertEquals(
                "Half an hour has gone. Take five minutes off, for hands and ears: leave the keys and let the arms hang; "
                        + "if anything hurts, stop for today. help hands says more.",
                Breaks.CAUTION.toString());
    }
}
