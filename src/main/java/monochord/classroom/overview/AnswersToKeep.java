package monochord.classroom.overview;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import monochord.classroom.MarkedAnswer;
import monochord.classroom.MarkedHandIn;
import monochord.practice.mastery.Attempt;
import monochord.record.KeptAttempt;

/** What of a marked hand-in goes on record: the answers of a pupil who is known, to questions that were assigned. */
public final class AnswersToKeep {
    private AnswersToKeep() {}

    /**
     * In the order of their questions, a millisecond apart, so that one follows the other.
     *
     * @param today on which it was handed in, where the file tells no day, or one that has not come yet
     */
    public static List<KeptAttempt> of(MarkedHandIn marked, LocalDate today) {
        if (marked.signs().unknown() || marked.code().isEmpty()) {
            return List.of();
        }
        LocalDate day = marked.given().filter(given -> !given.isAfter(today)).orElse(today);
        List<KeptAttempt> kept = new ArrayList<>();
        for (MarkedAnswer answer : marked.answers()) {
            answer.attempts(day).forEach(attempt -> kept.add(later(attempt, kept.size())));
        }
        return kept;
    }

    private static KeptAttempt later(KeptAttempt kept, int millis) {
        Attempt attempt = kept.attempt();
        Attempt later = new Attempt(
                attempt.time() + millis,
                attempt.lesson(),
                attempt.skill(),
                attempt.subject(),
                attempt.key(),
                attempt.seed(),
                attempt.answer(),
                attempt.grade(),
                attempt.misconception(),
                attempt.millis(),
                attempt.hints(),
                attempt.tries());
        return new KeptAttempt(later, kept.learner(), kept.assignment());
    }
}
