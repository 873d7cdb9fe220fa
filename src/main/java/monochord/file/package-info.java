/**
 * How a file is written, in every room that writes one: whole or not at all.
 *
 * <p>Imports nothing but the JDK.
 */
package monochord.file;
