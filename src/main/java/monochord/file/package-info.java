/**
 * How a file is written, in every room that writes one: whole or not at all; and its fingerprint.
 *
 * <p>Imports {@code text}.
 */
package monochord.file;
