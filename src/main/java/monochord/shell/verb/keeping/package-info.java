/**
 * Verbs about what is kept and how the program stands here: settings, the record, what is there and what is not.
 *
 * <p>Imports {@code file}, {@code lesson}, {@code sound}, {@code text}, {@code view} and the parts of {@code shell}.
 */
package monochord.shell.verb.keeping;
