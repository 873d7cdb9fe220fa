package monochord.classroom;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Verdict;
import monochord.practice.mastery.Attempt;
import monochord.record.KeptAttempt;

/**
 * What one pupil answered to one question, judged.
 *
 * @param assignment its id
 * @param question as it was assigned
 * @param tries each answer with its verdict, in order; none if nothing was written
 * @param help how many hints were taken, as told by the file
 * @param seconds how long it took, as told by the file; 0 if it tells nothing
 * @param altered whether the question stands otherwise in the file than it was assigned
 */
public record MarkedAnswer(
        String assignment,
        PupilCode code,
        int item,
        Question question,
        List<MarkedTry> tries,
        int help,
        int seconds,
        boolean altered) {
    /** @param answer as it was typed */
    public record MarkedTry(String answer, Verdict verdict) {
        boolean isRead() {
            return verdict.grade() != Grade.UNREADABLE;
        }
    }

    public MarkedAnswer {
        tries = List.copyOf(tries);
    }

    /** The answer that stands, which is the last. */
    public Optional<MarkedTry> last() {
        return tries.isEmpty() ? Optional.empty() : Optional.of(tries.get(tries.size() - 1));
    }

    /** Whether the answer that stands is right. */
    public boolean isRight() {
        return last().filter(one -> one.verdict().grade().isRight()).isPresent();
    }

    /**
     * Its tries as attempts of that pupil, those that can be read. None of them if the question was altered: they answer
     * something else.
     *
     * @param day on which it was handed in
     */
    public List<KeptAttempt> attempts(LocalDate day) {
        List<KeptAttempt> attempts = new ArrayList<>();
        for (MarkedTry one : altered ? List.<MarkedTry>of() : tries) {
            if (one.isRead()) {
                Attempt attempt = attempt(one, day, attempts.size());
                attempts.add(new KeptAttempt(attempt, code.text(), assignment));
            }
        }
        return attempts;
    }

    private Attempt attempt(MarkedTry one, LocalDate day, int before) {
        String misconception = one.verdict().misconception();
        return new Attempt(
                day.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli(),
                "",
                question.skillId(),
                question.subject(),
                question.key().toString(),
                question.seed(),
                one.answer(),
                one.verdict().grade(),
                misconception == null ? "" : misconception,
                before == 0 ? Math.min(seconds, Integer.MAX_VALUE / 1000) * 1000 : 0,
                help,
                before);
    }
}
