/**
 * The line's side of a cell of Java: what the sitting asks of it ({@code Cell}); starts a JVM for it, talks to it, ends it when it must, and tells what came of a run.
 *
 * <p>Part of the shell room; imports {@code answer} and what they lead to, and of {@code far} only the
 * class that is started and its limits.
 */
package monochord.shell.cell;
