package monochord.practice.mastery;

import monochord.practice.Grade;

/** How an answer came: the four steps that the model of memory tells apart, under names of our own. */
public enum Rating {
    FORGOTTEN,
    LABOURED,
    RECALLED,
    FLUENT;

    /** Slower than so many times one's own pace was laboured. */
    private static final double SLOW = 2;

    /** Faster than this share of one's own pace was fluent. */
    private static final double QUICK = 0.5;

    /** Below so many timed answers, nobody has a pace yet. */
    private static final int ENOUGH = 5;

    /**
     * Any answer that is not right, and a right one after the second hint, which gives the first move away, counts as
     * forgotten. A right one after the first hint was laboured, and so was one that took twice the learner's own pace in
     * this skill; one that took half of it was fluent. Until there is a pace, right is recalled.
     *
     * <p>Our own rule, no source; that a failed answer never counts as recalled, however hard it was, follows the advice
     * to users of FSRS, from memory.
     *
     * @param pace what the learner's pace in the skill was before
     */
    public static Rating of(Evidence evidence, Pace pace) {
        if (evidence.grade().compareTo(Grade.REMARK) > 0 || evidence.hints() > 1) {
            return FORGOTTEN;
        }
        if (evidence.hints() == 1) {
            return LABOURED;
        }
        return evidence.isTimed() && pace.answers() >= ENOUGH ? against(evidence.millis(), pace.millis()) : RECALLED;
    }

    private static Rating against(double millis, double own) {
        return millis > SLOW * own ? LABOURED : millis <= QUICK * own ? FLUENT : RECALLED;
    }

    /** From 1 for forgotten to 4 for fluent, as the model counts. */
    public int number() {
        return ordinal() + 1;
    }
}
