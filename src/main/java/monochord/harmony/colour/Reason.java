package monochord.harmony.colour;

import monochord.text.Phrase;

/**
 * Why a change would sound well, or what it costs.
 *
 * @param points what it counts in the score; below 0 where it counts against
 */
public record Reason(int points, Phrase sentence) {}
