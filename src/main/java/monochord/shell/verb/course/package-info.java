/** The verbs of learning and teaching. */
package monochord.shell.verb.course;
