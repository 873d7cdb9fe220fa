package monochord.practice.knowing;

import monochord.practice.Grade;

/** How an answer came, as the model of memory wants to hear it. */
public enum Rating {
    AGAIN,
    HARD,
    GOOD,
    EASY;

    /** Slower than so many times one's own pace was hard work. */
    private static final double SLOW = 2;

    /** Faster than this share of one's own pace was easy. */
    private static final double QUICK = 0.5;

    /** Below so many timed answers, nobody has a pace yet. */
    private static final int ENOUGH = 5;

    /**
     * Any answer that is not right, and a right one after the second hint, which gives the first move away, counts as
     * forgotten. A right one after the first hint was hard, and so was one that took twice the learner's own pace in this
     * skill; one that took half of it was easy. Until there is a pace, right is good.
     *
     * <p>Our own rule, no source; that a failed answer must never be called hard follows the advice to users of FSRS, from
     * memory.
     *
     * @param pace what the learner's pace in the skill was before
     */
    public static Rating of(Evidence evidence, Pace pace) {
        if (evidence.grade().compareTo(Grade.REMARK) > 0 || evidence.hints() > 1) {
            return AGAIN;
        }
        if (evidence.hints() == 1) {
            return HARD;
        }
        return evidence.isTimed() && pace.answers() >= ENOUGH ? against(evidence.millis(), pace.millis()) : GOOD;
    }

    private static Rating against(double millis, double own) {
        return millis > SLOW * own ? HARD : millis <= QUICK * own ? EASY : GOOD;
    }

    /** From 1 for again to 4 for easy. */
    public int number() {
        return ordinal() + 1;
    }
}
