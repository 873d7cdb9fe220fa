/**
 * Things drawn on paper, with their meaning: signs, lines, words, shapes; and the same list of them written as SVG. Lengths
 * are those of whoever draws: staff spaces within music, millimetres on a page; y runs down.
 *
 * <p>Imports {@code text} and {@code view.web}.
 */
package monochord.view.drawn;
