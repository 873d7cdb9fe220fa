/**
 * What the line and its cell say to each other.
 *
 * <p>Part of the shell room; imports only the JDK.
 */
package monochord.shell.cell.wire;
