/**
 * What runs in the cell's own JVM: JShell with an engine of ours, the words a learner has at hand, and a watch that ends
 * all of it when the line is gone.
 *
 * <p>Imports {@code theory}, {@code harmony}, {@code text} and {@code wire}. The line's JVM loads nothing of it.
 */
package monochord.cell.sandbox;
