package monochord.practice.knowing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.practice.Grade;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own rule, no source. */
class RatingTest {
    private static final Item ITEM = new Item("triad-spelling", "D major");

    /** A learner who takes ten seconds, over this many answers. */
    private static Pace tenSeconds(int answers) {
        Pace pace = Pace.NONE;
        for (int i = 0; i < answers; i++) {
            pace = pace.plus(new Evidence(i, ITEM, Grade.RIGHT, 10_000, 0));
        }
        return pace;
    }

    @ParameterizedTest(name = "{0} after {1} hints in {2} s: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            RIGHT  | 0 | 10  | GOOD
            REMARK | 0 | 10  | GOOD
            RIGHT  | 0 | 5   | EASY
            REMARK | 0 | 5   | EASY
            RIGHT  | 0 | 5.5 | GOOD
            RIGHT  | 0 | 20  | GOOD
            RIGHT  | 0 | 21  | HARD
            RIGHT  | 0 | 301 | GOOD
            RIGHT  | 1 | 5   | HARD
            RIGHT  | 2 | 5   | AGAIN
            RIGHT  | 3 | 5   | AGAIN
            NEARLY | 0 | 5   | AGAIN
            WRONG  | 0 | 5   | AGAIN
            WRONG  | 1 | 90  | AGAIN
            """)
    void anAnswerIsRatedByVerdictHelpAndTheLearnersOwnPace(Grade grade, int hints, double seconds, Rating rating) {
        Evidence evidence = new Evidence(99, ITEM, grade, (int) (seconds * 1000), hints);
        assertEquals(rating, Rating.of(evidence, tenSeconds(8)));
    }

    @ParameterizedTest(name = "after {0} answers: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            0 | GOOD
            4 | GOOD
            5 | EASY
            """)
    void nobodyHasAPaceBeforeFiveAnswers(int answers, Rating rating) {
        assertEquals(rating, Rating.of(new Evidence(99, ITEM, Grade.RIGHT, 1000, 0), tenSeconds(answers)));
    }
}
