package monochord.harmony.colour;

/**
 * Why a change would sound well, or what it costs.
 *
 * @param points what it counts in the score; below 0 where it counts against
 * @param sentence with the signs of printed music
 */
public record Reason(int points, String sentence) {}
