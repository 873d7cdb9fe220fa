package monochord.record;

import monochord.practice.mastery.SkillInKey;

/**
 * What the first answer of a pupil to a question says, as a class is looked at.
 *
 * @param time when it was given, in milliseconds since 1970 in UTC, as the pupil's file tells
 * @param pupil the pupil's code
 * @param misconception the id of the wrong procedure that leads to the answer, empty if none is known
 * @param isRight whether the answer was right
 * @param isKnown whether it was right alone, without a hint
 */
public record PupilAnswer(
        long time, String pupil, SkillInKey item, String misconception, boolean isRight, boolean isKnown) {}
