package monochord.score;

import monochord.theory.note.Beats;

/**
 * A chord symbol or a word, and the stretch of the score it stands over.
 *
 * @param start beats from the beginning of the score
 * @param length beats
 */
public record Caption(String text, Beats start, Beats length) {}
