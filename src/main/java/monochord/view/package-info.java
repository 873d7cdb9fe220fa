/**
 * How results look: each {@link monochord.view.Answer} is text for a terminal, one fact a line for a screen reader, and
 * JSON; beside it keyboards drawn in text, tables, and pages for a browser.
 *
 * <p>What is drawn is laid out for the {@link monochord.theory.note.Signs} handed in, for {@code F𝄪} is narrower than {@code F##}.
 *
 * <p>Imports {@code theory}, {@code harmony}, {@code score}, {@code practice}, {@code lesson} and {@code text}; knows no
 * terminal.
 */
package monochord.view;
