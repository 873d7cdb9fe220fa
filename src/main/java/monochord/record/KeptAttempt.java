package monochord.record;

import monochord.practice.mastery.Attempt;

/**
 * An attempt as it is kept, with whose it is and what it was given for.
 *
 * @param learner the code of somebody else who gave it, a pupil's; empty where it is the attempt of whose record this is
 * @param assignment the id of the assignment it was given for, empty if it was for none
 */
public record KeptAttempt(Attempt attempt, String learner, String assignment) {
    /** @throws IllegalArgumentException if there is blank space around the learner or the assignment */
    public KeptAttempt {
        if (!learner.equals(learner.strip()) || !assignment.equals(assignment.strip())) {
            throw new IllegalArgumentException(
                    "no blank space may stand around \"" + learner + "\" or \"" + assignment + "\"");
        }
    }

    /** An attempt of whose record this is, for no assignment. */
    public static KeptAttempt own(Attempt attempt) {
        return new KeptAttempt(attempt, "", "");
    }

    /** Whether it counts for what the one whose record this is knows. */
    public boolean isOwn() {
        return learner.isEmpty();
    }
}
