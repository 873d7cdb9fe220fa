package monochord.practice.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;

import monochord.practice.Grade;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own rule, no source. */
class RatingTest {
    private static final SkillInKey ITEM = new SkillInKey("triad-spelling", "D major");

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
            RIGHT  | 0 | 10  | RECALLED
            REMARK | 0 | 10  | RECALLED
            RIGHT  | 0 | 5   | FLUENT
            REMARK | 0 | 5   | FLUENT
            RIGHT  | 0 | 5.5 | RECALLED
            RIGHT  | 0 | 20  | RECALLED
            RIGHT  | 0 | 21  | LABOURED
            RIGHT  | 0 | 301 | RECALLED
            RIGHT  | 1 | 5   | LABOURED
            RIGHT  | 2 | 5   | FORGOTTEN
            RIGHT  | 3 | 5   | FORGOTTEN
            NEARLY | 0 | 5   | FORGOTTEN
            WRONG  | 0 | 5   | FORGOTTEN
            WRONG  | 1 | 90  | FORGOTTEN
            """)
    void anAnswerIsRatedByVerdictHelpAndTheLearnersOwnPace(Grade grade, int hints, double seconds, Rating rating) {
        Evidence evidence = new Evidence(99, ITEM, grade, (int) (seconds * 1000), hints);
        assertEquals(rating, Rating.of(evidence, tenSeconds(8)));
    }

    @ParameterizedTest(name = "after {0} answers: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            0 | RECALLED
            4 | RECALLED
            5 | FLUENT
            """)
    void nobodyHasAPaceBeforeFiveAnswers(int answers, Rating rating) {
        assertEquals(rating, Rating.of(new Evidence(99, ITEM, Grade.RIGHT, 1000, 0), tenSeconds(answers)));
    }
}
