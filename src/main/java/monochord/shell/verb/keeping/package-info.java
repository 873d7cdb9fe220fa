/** Verbs about what is kept and how the program stands here: settings, the record, what is there and what is not. */
package monochord.shell.verb.keeping;
