package monochord.shell.sitting;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Random;
import monochord.course.Course;
import monochord.practice.drill.Turn;
import monochord.shell.playback.Ear;
import org.junit.jupiter.api.Test;

/** What is asked of somebody who types ask and names nothing. */
class SuggestedTest {
    @Test
    void nothingOpensInTheHardestKey() {
        for (int seed = 0; seed < 100; seed++) {
            Sitting sitting =
                    new Sitting(Ear.silent(), new Random(seed)::nextLong, Path.of(""), new Course(Path.of("lessons")));
            Turn turn = sitting.teaching().suggested(seed);
            assertTrue(turn.difficulty() < 1, turn.toString());
            assertTrue(Math.abs(turn.key().signature()) < 5, turn.toString());
        }
    }
}
