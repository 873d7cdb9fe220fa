package monochord.harmony.motion;

/**
 * Two voices over one change.
 *
 * @param lower the voice with the smaller number, whichever sounds lower
 * @param before the perfect interval between them in the first chord, if there is one
 * @param after the same in the second
 */
public record Pair(Move lower, Move upper, Motion motion, Perfect before, Perfect after) {
    static Pair of(Move lower, Move upper) {
        return new Pair(
                lower,
                upper,
                Motion.of(lower, upper),
                Perfect.between(lower.from(), upper.from()),
                Perfect.between(lower.to(), upper.to()));
    }

    /**
     * The perfect interval in which both move the same way, compounds included: from a fifth to a twelfth is in fifths.
     *
     * <p>Source: Integrated Music Theory (open university course text), lesson 10b.
     */
    public Perfect parallel() {
        return motion.isSameWay() ? Perfect.running(before, after) : Perfect.NONE;
    }

    /** The perfect interval that is kept by contrary motion, as from a fifth to a twelfth. */
    public Perfect contrary() {
        return motion == Motion.CONTRARY ? Perfect.running(before, after) : Perfect.NONE;
    }

    /** The perfect interval that is only struck again: no parallel, for nothing moves. */
    public Perfect repeated() {
        return motion == Motion.STILL ? after : Perfect.NONE;
    }

    /** The perfect interval that both reach going the same way, from another interval. */
    public Perfect direct() {
        return motion.isSameWay() && parallel() == Perfect.NONE ? after : Perfect.NONE;
    }

    /** Whether both go the same way from a diminished fifth, by letters, to a perfect one. */
    public boolean opensDiminishedFifth() {
        return motion.isSameWay() && after == Perfect.FIFTH && isDiminishedFifth(lower, upper);
    }

    private static boolean isDiminishedFifth(Move lower, Move upper) {
        int halfSteps = upper.from().midiNumber() - lower.from().midiNumber();
        int letters = upper.from().staffPosition() - lower.from().staffPosition();
        return Math.floorMod(halfSteps, 12) == 6 && Math.floorMod(letters, 7) == 4;
    }
}
