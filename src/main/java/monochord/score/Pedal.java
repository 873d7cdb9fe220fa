package monochord.score;

import monochord.theory.note.Beats;

/**
 * A stretch with the sustain pedal down.
 *
 * @param start beats from the beginning of the score
 * @param end beats from the beginning of the score, after {@code start}
 */
public record Pedal(Beats start, Beats end) {}
