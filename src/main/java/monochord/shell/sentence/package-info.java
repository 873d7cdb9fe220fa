/**
 * What every verb is made of: a sentence in parts with their places, how a verb is used, the key a sentence is in; and what
 * people say that is no sentence.
 *
 * <p>Imports {@code sitting}, {@code answer} and {@code theory}, and no verb.
 */
package monochord.shell.sentence;
