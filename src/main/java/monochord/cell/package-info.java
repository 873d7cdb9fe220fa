/**
 * Java that a learner types, run in a JVM of its own: starts that JVM, talks to it, ends it when it must, and hands out what
 * came of a run as a value ({@code CellReport}).
 *
 * <p>Imports {@code theory}, {@code harmony} and {@code text}; of {@code far} only the class that is started and its limits.
 */
package monochord.cell;
