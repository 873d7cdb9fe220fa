package monochord.practice.mastery;

import java.util.Optional;
import monochord.practice.Grade;

/**
 * One readable answer to a question. What could not be read is no attempt.
 *
 * @param time when it was given, in milliseconds since 1970 in UTC
 * @param lesson the slug of the lesson that asked, empty if none did
 * @param skill the skill's id
 * @param subject in its canonical text
 * @param key in its canonical text, {@code D major}
 * @param seed the question's; 0 if the subject was given
 * @param answer as it was typed
 * @param misconception the id of the wrong procedure that leads to the answer, empty if none is known
 * @param millis thinking time: since the question was put, or since the verdict on the try before
 * @param hints how many were taken before it
 * @param tries how many readable answers to the same question came before it
 */
public record Attempt(
        long time,
        String lesson,
        String skill,
        String subject,
        String key,
        long seed,
        String answer,
        Grade grade,
        String misconception,
        int millis,
        int hints,
        int tries) {

    /** @throws IllegalArgumentException if the answer was not read, or a number is negative */
    public Attempt {
        if (grade == Grade.UNREADABLE) {
            throw new IllegalArgumentException("an answer that cannot be read is no attempt: " + answer);
        }
        if (millis < 0 || hints < 0 || tries < 0) {
            throw new IllegalArgumentException(
                    "millis, hints and tries are 0 or more, not " + millis + ", " + hints + ", " + tries);
        }
    }

    /** What it says about the learner: the first try does, later ones have been put right on the way. */
    public Optional<Evidence> evidence() {
        return tries > 0
                ? Optional.empty()
                : Optional.of(new Evidence(time, new SkillInKey(skill, key), grade, millis, hints));
    }
}
