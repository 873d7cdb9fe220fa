package monochord.practice.mastery;

/**
 * How it stands with one skill in one key.
 *
 * @param mastery how probable it is that it is known, from 0 to 1
 * @param last when it was last asked, in milliseconds since 1970 in UTC
 * @param pace how long right answers take in this key
 * @param asked how many questions there were
 * @param right how many of them were answered rightly at once and alone
 */
public record SkillMastery(double mastery, Memory memory, long last, Pace pace, int asked, int right) {
    private static final double DAY = 24 * 60 * 60 * 1000.0;

    /** What is due tomorrow at this time is due tomorrow morning already. */
    private static final long GRACE = (long) (DAY / 2);

    /** Half as slow again as in the other keys is not fluent yet. */
    private static final double SLOW = 1.5;

    private static final int ENOUGH = 3;

    static SkillMastery first(Evidence evidence, Rating rating) {
        return new SkillMastery(
                traced(evidence, Tracing.of(evidence.item().skill()).start()),
                Memory.first(rating),
                evidence.time(),
                Pace.NONE.plus(evidence),
                1,
                evidence.isKnown() ? 1 : 0);
    }

    SkillMastery after(Evidence evidence, Rating rating) {
        return new SkillMastery(
                traced(evidence, mastery),
                memory.after(days(evidence.time()), rating),
                evidence.time(),
                pace.plus(evidence),
                asked + 1,
                right + (evidence.isKnown() ? 1 : 0));
    }

    private static double traced(Evidence evidence, double before) {
        return Tracing.of(evidence.item().skill()).after(before, evidence.isKnown());
    }

    /** Days since it was last asked; none if the clock has been set back. */
    private double days(long time) {
        return Math.max(0, (time - last) / DAY);
    }

    /** When to bring it back: half a day before the interval is over, so that the time of day does not matter. */
    public long due() {
        return last + Math.round(memory.interval() * DAY) - GRACE;
    }

    public boolean isDue(long time) {
        return due() <= time;
    }

    /** The probability that it is recalled now. */
    public double recall(long time) {
        return memory.recall(days(time));
    }

    /** How firmly it stands now: the probability that it was learned and is still there. */
    public double strength(long time) {
        return mastery * recall(time);
    }

    public boolean isMastered() {
        return mastery >= Tracing.MASTERY;
    }

    /**
     * Whether right answers take clearly longer than the learner takes in this skill elsewhere.
     *
     * @param own the learner's pace in the skill, all keys together
     */
    public boolean isSlow(Pace own) {
        return pace.answers() >= ENOUGH && pace.millis() > SLOW * own.millis();
    }
}
