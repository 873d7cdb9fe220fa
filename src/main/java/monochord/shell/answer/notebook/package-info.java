/**
 * What is answered to Java, and about the pages that become of a sitting.
 *
 * <p>Imports {@code answer} and the rooms whose values it shows.
 */
package monochord.shell.answer.notebook;
