/**
 * Where the learner's own things are kept between sittings: the record and the settings.
 *
 * <p>Imports {@code record} and {@code practice}, and nothing of the sitting.
 */
package monochord.shell.storage;
