/**
 * Skills of the ear: intervals, qualities of chords, and progressions, named by their sound alone.
 *
 * <p>What is heard is drawn with the seed: how high it lies and how it is layout out. An answer is right when it sounds the
 * same. What an answer would have sounded like is worked out too, so that both can be heard one after the other.
 *
 * <p>The advice, bass first and then the quality of the chord above it: Open Music Theory (2014), on dictation. What an
 * interval or a chord feels like: common practice, no source.
 *
 * <p>Imports {@code theory}, {@code harmony} and the other packages of {@code practice} but {@code practice.skill}.
 */
package monochord.practice.skill.ear;
