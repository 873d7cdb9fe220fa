/**
 * Text that is shown to a reader: lines of styled text, how they are wrapped to a width, and what keeps them safe.
 *
 * <p>A style says what a piece of text means, never how it is coloured; whoever shows it turns styles into colours or into
 * nothing, so no text may need them.
 *
 * <p>Imports {@code theory}; does no input or output, holds no state.
 */
package monochord.text;
