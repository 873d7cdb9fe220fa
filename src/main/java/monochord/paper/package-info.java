/**
 * What is handed on: charts for the players of a band, and handouts, as pages to print and as MusicXML.
 *
 * <p>Imports {@code theory}, {@code harmony}, {@code song}, {@code score}, {@code text} and {@code view}.
 */
package monochord.paper;
