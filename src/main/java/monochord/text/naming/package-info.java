/**
 * Note names of other countries in running text: {@code InProse} finds them in the prose of
 * lessons, {@code ToType} into examples, {@code AsTyped} takes them out of what a learner typed. May import {@code theory}.
 */
package monochord.text.naming;
