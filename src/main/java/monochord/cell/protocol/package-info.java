/**
 * What the line and its cell say to each other.
 *
 * <p>Imports only the JDK.
 */
package monochord.cell.protocol;
