package monochord.harmony.motion;

/**
 * Two voices over one change.
 *
 * @param lower the voice with the smaller number, whichever sounds lower
 * @param before the perfect interval between them in the first chord, if there is one
 * @param after the same in the second
 */
public record VoicePair(
        VoiceMove lower, VoiceMove upper, Motion motion, PerfectInterval before, PerfectInterval after) {
    static VoicePair of(VoiceMove lower, VoiceMove upper) {
        return new VoicePair(
                lower,
                upper,
                Motion.of(lower, upper),
                PerfectInterval.between(lower.from(), upper.from()),
                PerfectInterval.between(lower.to(), upper.to()));
    }

    /**
     * The perfect interval in which both move the same way, compounds included: from a fifth to a twelfth is in fifths.
     *
     * <p>Source: Integrated Music Theory (open university course text), lesson 10b.
     */
    public PerfectInterval parallel() {
        return motion.isSameWay() ? PerfectInterval.running(before, after) : PerfectInterval.NONE;
    }

    /** The perfect interval that is kept by contrary motion, as from a fifth to a twelfth. */
    public PerfectInterval contrary() {
        return motion == Motion.CONTRARY ? PerfectInterval.running(before, after) : PerfectInterval.NONE;
    }

    /** The perfect interval that is only struck again: no parallel, for nothing moves. */
    public PerfectInterval repeated() {
        return motion == Motion.STILL ? after : PerfectInterval.NONE;
    }

    /** The perfect interval that both reach going the same way, from another interval. */
    public PerfectInterval direct() {
        return motion.isSameWay() && parallel() == PerfectInterval.NONE ? after : PerfectInterval.NONE;
    }

    /** Whether both go the same way from a diminished fifth, by letters, to a perfect one. */
    public boolean opensDiminishedFifth() {
        return motion.isSameWay() && after == PerfectInterval.FIFTH && isDiminishedFifth(lower, upper);
    }

    private static boolean isDiminishedFifth(VoiceMove lower, VoiceMove upper) {
        int halfSteps = upper.from().midiNumber() - lower.from().midiNumber();
        int letters = upper.from().staffPosition() - lower.from().staffPosition();
        return Math.floorMod(halfSteps, 12) == 6 && Math.floorMod(letters, 7) == 4;
    }
}
