/** The verbs for files that are read as documents: lessons and notebooks. */
package monochord.shell.verb.writing;
