package monochord.practice;

import monochord.theory.Key;

/**
 * What a question is about.
 *
 * @param skill the skill's id
 * @param subject the subject in its canonical text, which the skill reads again
 * @param key the key it is asked in, or the one that the subject names
 */
public record Topic(String skill, String subject, Key key) {}
