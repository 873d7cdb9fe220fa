package monochord.practice.drill;

/**
 * How a set of questions went.
 *
 * @param asked how many were answered
 * @param right how many of them at the first try without help
 */
public record Tally(int asked, int right) {
    public static final Tally NONE = new Tally(0, 0);
}
