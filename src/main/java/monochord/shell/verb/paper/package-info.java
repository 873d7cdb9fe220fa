/**
 * What goes on paper: files with staves, handouts and charts. Nothing that stands already is overwritten unasked.
 *
 * <p>Imports what {@code shell} may.
 */
package monochord.shell.verb.paper;
