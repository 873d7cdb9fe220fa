/**
 * The verbs of learning and teaching.
 *
 * <p>Imports {@code sentence}, {@code sitting}, {@code answer} and any other room; of the verbs only those that sound.
 */
package monochord.shell.verb.course;
