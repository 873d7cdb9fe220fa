/**
 * What is handed on: charts for the players of a band, handouts, worksheets with their keys, as pages to print and as
 * MusicXML.
 *
 * <p>Imports {@code theory}, {@code harmony}, {@code song}, {@code score}, {@code practice}, {@code lesson}, {@code text}
 * and {@code view}.
 */
package monochord.paper;
