/**
 * How values look: lines of styled text for a terminal, and the keyboard drawn in them.
 *
 * <p>A style says what a piece of text means, never how it is coloured; the shell turns styles into colours or into
 * nothing, so no picture may need them. What is drawn is laid out for the {@link monochord.theory.Signs} handed in, for
 * {@code F𝄪} is narrower than {@code F##}.
 *
 * <p>Imports {@code theory} and {@code harmony}; knows no terminal, does no input or output, holds no state.
 */
package monochord.page;
