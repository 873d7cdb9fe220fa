package monochord.classroom.overview;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ObjIntConsumer;
import monochord.practice.mastery.Tracing;

/**
 * The answers of one pupil to one skill in one key, in eight bytes each: when, and whether it was known; and which wrong
 * procedures led to how many of them.
 */
final class AnswersSoFar {
    private static final int FEW = 4;
    private static final int NOT_KNOWN = 1;

    private long[] answers = new long[FEW];
    private int count;
    private int known;
    /** Few are different: to look through them is quickest. */
    private final List<String> misconceptions = new ArrayList<>();

    private int[] times = new int[FEW];
    private boolean isInOrder = true;

    /** At equal times what was known comes first. */
    void add(long time, boolean isKnown) {
        if (count == answers.length) {
            answers = Arrays.copyOf(answers, count * 2);
        }
        long answer = time << 1 | (isKnown ? 0 : NOT_KNOWN);
        isInOrder &= count == 0 || answers[count - 1] <= answer;
        answers[count++] = answer;
        known += isKnown ? 1 : 0;
    }

    /** One more answer to which this wrong procedure led. */
    void addMistake(String misconception) {
        int index = misconceptions.indexOf(misconception);
        if (index < 0) {
            index = misconceptions.size();
            misconceptions.add(misconception);
            times = index == times.length ? Arrays.copyOf(times, index * 2) : times;
        }
        times[index]++;
    }

    /** Each wrong procedure by its id, and to how many answers it led. */
    void mistakes(ObjIntConsumer<String> each) {
        for (int i = 0; i < misconceptions.size(); i++) {
            each.accept(misconceptions.get(i), times[i]);
        }
    }

    int count() {
        return count;
    }

    int known() {
        return known;
    }

    /** How probable it is that it is known, after all of them in the order of time. */
    double mastery(Tracing tracing) {
        if (!isInOrder) {
            Arrays.sort(answers, 0, count);
            isInOrder = true;
        }
        double mastery = tracing.start();
        for (int i = 0; i < count; i++) {
            mastery = tracing.after(mastery, (answers[i] & NOT_KNOWN) == 0);
        }
        return mastery;
    }
}
