/**
 * How results look: keyboards drawn in text, tables, pages.
 *
 * <p>What is drawn is laid out for the {@link monochord.theory.Signs} handed in, for {@code F𝄪} is narrower than {@code F##}.
 *
 * <p>Imports {@code theory}, {@code harmony}, {@code score}, {@code practice}, {@code lesson} and {@code text}; knows no
 * terminal.
 */
package monochord.view;
