/**
 * What is answered to Java, and about the pages that become of a sitting.
 *
 * <p>Imports what {@code view} may: the rooms whose values it shows.
 */
package monochord.view.notebook;
