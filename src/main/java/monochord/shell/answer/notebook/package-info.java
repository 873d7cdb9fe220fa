/** What is answered to Java, and about the pages that become of a sitting. */
package monochord.shell.answer.notebook;
