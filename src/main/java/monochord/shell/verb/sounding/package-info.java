/** The verbs that sound and say how, and the options that write sound to files. */
package monochord.shell.verb.sounding;
