/** What goes on paper: files with staves, handouts and charts. Nothing that stands already is overwritten unasked. */
package monochord.shell.verb.paper;
