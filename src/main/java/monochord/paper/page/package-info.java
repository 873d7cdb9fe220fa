/**
 * Pages to print: blocks put below each other on paper of a known size, written as PDF or SVG from the same drawn things.
 *
 * <p>Imports {@code text}, {@code view.drawn}, {@code view.keyboard} and {@code view.staff}.
 */
package monochord.paper.page;
