/**
 * The notebook: a sitting as a Markdown document, read, written and compared.
 *
 * <p>Imports {@code lesson} with its {@code read}, {@code text}, {@code file} and {@code theory}. Files are read and never written; nothing that stands
 * in a notebook is run here.
 */
package monochord.notebook;
