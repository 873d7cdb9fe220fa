/**
 * What every verb is made of: a sentence in parts with their places, how a verb is used, the key a sentence is in.
 *
 * <p>Part of the shell room; knows the sitting and what is answered, and no verb.
 */
package monochord.shell.sentence;
