package monochord.practice.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Equations: Corbett and Anderson, User Modeling and User-Adapted Interaction 4 (1994/95), pages 253 to 278. The rows were
 * worked out from them by hand, apart from this code; the third sequence and its parameters are a published teaching
 * example.
 */
class TracingTest {
    private static final double FOUR_PLACES = 0.00005;

    private record Step(boolean right, double before, double expected, double given, double after) {}

    private static void follows(Tracing tracing, List<Step> steps) {
        double known = tracing.start();
        for (Step step : steps) {
            assertEquals(step.before, known, FOUR_PLACES);
            assertEquals(step.expected, tracing.right(known), FOUR_PLACES);
            assertEquals(step.given, tracing.given(known, step.right), FOUR_PLACES);
            known = tracing.after(known, step.right);
            assertEquals(step.after, known, FOUR_PLACES);
        }
    }

    @Test
    void oneSlipIsForgivenAfterTwoRightAnswers() {
        follows(
                new Tracing(0.30, 0.15, 0.20, 0.10),
                List.of(
                        new Step(true, 0.3000, 0.4100, 0.6585, 0.7098),
                        new Step(true, 0.7098, 0.6968, 0.9167, 0.9292),
                        new Step(false, 0.9292, 0.8504, 0.6213, 0.6781),
                        new Step(true, 0.6781, 0.6746, 0.9046, 0.9189),
                        new Step(true, 0.9189, 0.8432, 0.9808, 0.9836)));
    }

    @Test
    void spellingAChordIsSeldomGuessedSoTwoRightAnswersSayMuch() {
        follows(
                Tracing.TYPED,
                List.of(
                        new Step(false, 0.2000, 0.2200, 0.0256, 0.1231),
                        new Step(true, 0.1231, 0.1546, 0.7164, 0.7448),
                        new Step(true, 0.7448, 0.6831, 0.9813, 0.9832),
                        new Step(true, 0.9832, 0.8857, 0.9991, 0.9991)));
    }

    @Test
    void theTeachingExampleOfTenAnswersComesOut() {
        follows(
                new Tracing(0.5, 0.4, 0.2, 0.2),
                List.of(
                        new Step(false, 0.5000, 0.5000, 0.2000, 0.5200),
                        new Step(false, 0.5200, 0.5120, 0.2131, 0.5279),
                        new Step(true, 0.5279, 0.5167, 0.8173, 0.8904),
                        new Step(true, 0.8904, 0.7342, 0.9701, 0.9821),
                        new Step(true, 0.9821, 0.7892, 0.9955, 0.9973),
                        new Step(false, 0.9973, 0.7984, 0.9892, 0.9935),
                        new Step(true, 0.9935, 0.7961, 0.9984, 0.9990),
                        new Step(true, 0.9990, 0.7994, 0.9998, 0.9999),
                        new Step(false, 0.9999, 0.7999, 0.9994, 0.9996),
                        new Step(true, 0.9996, 0.7998, 0.9999, 0.9999)));
    }

    /** Chance of picking one of four, and the bounds usually kept: slip up to 0.1, guess up to 0.3. */
    @ParameterizedTest(name = "{0}: guessed {1}")
    @CsvSource(delimiter = '|', textBlock = """
            degree-quality | 0.25
            triad-spelling | 0.05
            borrowed-chord | 0.05
            """)
    void aQualityIsGuessedMoreEasilyThanASpelling(String skill, double guess) {
        Tracing tracing = Tracing.of(skill);
        assertEquals(guess, tracing.guess());
        assertTrue(tracing.slip() <= 0.1);
    }

    @Test
    void guessAndSlipTogetherStayBelowOne() {
        assertEquals(
                "guess and slip must stay below 1 together, not 1.0",
                assertThrows(IllegalArgumentException.class, () -> new Tracing(0.2, 0.1, 0.5, 0.5))
                        .getMessage());
        assertEquals(
                "probabilities lie between 0 and 1",
                assertThrows(IllegalArgumentException.class, () -> new Tracing(-0.2, 0.1, 0.2, 0.1))
                        .getMessage());
    }
}
