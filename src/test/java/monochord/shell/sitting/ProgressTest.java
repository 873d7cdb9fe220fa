package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import monochord.text.Phrase;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private long seconds;

    @Test
    void nothingIsToldOfWhatIsDoneAtOnceAndThenAWordEveryTwoSeconds() {
        List<String> told = new ArrayList<>();
        Progress progress = new Progress(phrase -> told.add(phrase.toString()), () -> seconds * 1_000_000_000L);
        for (int line = 1; line <= 6; line++) {
            int now = line;
            progress.step(() -> Phrase.sentence("Line {0} of {1}.", now, 6));
            seconds++;
        }
        assertEquals(List.of("Line 3 of 6.", "Line 5 of 6."), told);
    }
}
