package monochord.practice.mastery;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import monochord.theory.ReferenceLibraries;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * FSRS-6 with its default weights. The rows were computed with py-fsrs (open-spaced-repetition, MIT, state of 2026-03-10),
 * without learning steps and without fuzz.
 */
class MemoryTest {
    private static final double FOUR_PLACES = 0.00005;

    @ParameterizedTest(name = "after {0} times the stability: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            0   | 1.0000
            0.5 | 0.9403
            1   | 0.9000
            2   | 0.8459
            5   | 0.7605
            10  | 0.6928
            """)
    void recallFadesWithTime(double times, double recall) {
        assertEquals(recall, new Memory(1, 5).recall(times), FOUR_PLACES);
        assertEquals(recall, new Memory(30, 5).recall(30 * times), FOUR_PLACES);
    }

    @ParameterizedTest(name = "{0}: stable for {1} days, difficulty {2}")
    @CsvSource(delimiter = '|', textBlock = """
            FORGOTTEN | 0.2120 | 6.4133
            LABOURED  | 1.2931 | 5.1122
            RECALLED  | 2.3065 | 2.1181
            FLUENT  | 8.2956 | 1.0000
            """)
    void theFirstAnswerSaysHowItBegins(Rating rating, double stability, double difficulty) {
        assertEquals(stability, Memory.first(rating).stability(), FOUR_PLACES);
        assertEquals(difficulty, Memory.first(rating).difficulty(), FOUR_PLACES);
    }

    @Test
    void fiveReviewsWithOneLapseAmongThem() {
        Memory memory = Memory.first(Rating.RECALLED);
        stands(memory, 2.1181, 2.3065, 2);
        memory = reviewed(memory, 2, Rating.RECALLED, 0.9095);
        stands(memory, 2.1112, 10.9643, 11);
        memory = reviewed(memory, 11, Rating.RECALLED, 0.8998);
        stands(memory, 2.1043, 46.2802, 46);
        memory = reviewed(memory, 46, Rating.FORGOTTEN, 0.9004);
        stands(memory, 7.3900, 2.9326, 3);
        memory = reviewed(memory, 3, Rating.RECALLED, 0.8984);
        stands(memory, 7.3778, 7.7782, 8);
    }

    private static Memory reviewed(Memory memory, int days, Rating rating, double recall) {
        assertEquals(recall, memory.recall(days), FOUR_PLACES);
        return memory.after(days, rating);
    }

    private static void stands(Memory memory, double difficulty, double stability, int interval) {
        assertEquals(difficulty, memory.difficulty(), FOUR_PLACES);
        assertEquals(stability, memory.stability(), FOUR_PLACES);
        assertEquals(interval, memory.interval());
    }

    /** Where there is no night between, no answer makes much of a difference, and a right one never harms. */
    @Test
    void asManyRightAnswersAsOneLikesOnOneDayDoNotMakeItLast() {
        Memory memory = Memory.first(Rating.RECALLED);
        for (int i = 0; i < 50; i++) {
            Memory next = memory.after(0.01, Rating.RECALLED);
            assertTrue(next.stability() >= memory.stability());
            memory = next;
        }
        assertTrue(memory.stability() < 3, "stable for " + memory.stability() + " days");
    }

    /** Beside ts-fsrs 5.4.2, a thousand histories of up to twelve reviews, some of them on the same day. */
    @Test
    void memoriesAreTheOnesTsFsrsHas() throws IOException, InterruptedException {
        SplittableRandom chance = new SplittableRandom(6);
        List<List<String>> questions = new ArrayList<>();
        List<Memory> ours = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            List<String> question = new ArrayList<>(List.of("memory"));
            Memory memory = null;
            for (int reviews = chance.nextInt(1, 13); reviews > 0; reviews--) {
                Rating rating = Rating.values()[chance.nextInt(4)];
                int days = memory == null || chance.nextInt(4) == 0 ? 0 : chance.nextInt(1, 90);
                question.add(days + " " + rating.number());
                memory = memory == null ? Memory.first(rating) : memory.after(days, rating);
            }
            questions.add(question);
            ours.add(memory);
        }
        List<List<String>> theirs = ReferenceLibraries.answers(questions);
        for (int i = 0; i < ours.size(); i++) {
            String history = questions.get(i).toString();
            double stability = Double.parseDouble(theirs.get(i).get(0));
            assertEquals(stability, ours.get(i).stability(), FOUR_PLACES * Math.max(1, stability), history);
            assertEquals(Double.parseDouble(theirs.get(i).get(1)), ours.get(i).difficulty(), FOUR_PLACES, history);
            assertEquals(Long.parseLong(theirs.get(i).get(2)), ours.get(i).interval(), history);
        }
    }
}
