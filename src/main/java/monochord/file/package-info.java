/**
 * How a file is written, in every room that writes one: whole or not at all.
 *
 * <p>Imports {@code text}.
 */
package monochord.file;
