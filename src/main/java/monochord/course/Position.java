package monochord.course;

/**
 * How far something has come.
 *
 * @param at counted from 1
 * @param of how many there are
 */
public record Position(Unit unit, int at, int of) {
    /** What is counted. */
    public enum Unit {
        PAGE,
        QUESTION,
        STEP,
        SCREEN
    }
}
