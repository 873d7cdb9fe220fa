package monochord.course;

import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.knowing.Attempt;

/** The question that is open until it is answered rightly, told or left; it is remembered for {@code why}. */
public final class OpenQuestion {
    private final LongSupplier clock;
    private Question question;
    private String lesson = "";
    private long since;
    private Question lastQuestion;
    private Verdict lastVerdict;
    private Skill lastSkill;
    private int hints;
    private int tries;
    private boolean isTold;

    /** @param clock milliseconds since 1970 in UTC */
    public OpenQuestion(LongSupplier clock) {
        this.clock = clock;
    }

    /** Puts a question that was asked for by name. */
    public void put(Skill skill, Question next) {
        lay(next, "");
        lastSkill = skill;
    }

    /**
     * Puts a question of a lesson or of a run.
     *
     * @param asker the slug of the lesson, empty for a run
     */
    public void put(Question next, String asker) {
        lay(next, asker);
    }

    private void lay(Question next, String asker) {
        lesson = asker;
        since = clock.getAsLong();
        question = next;
        lastQuestion = next;
        lastVerdict = null;
        hints = 0;
        tries = 0;
        isTold = false;
    }

    /** Whether the last question was for the ear, and its answer was told after two wrong ones. */
    public boolean isToldByEar() {
        return isTold;
    }

    /** The answer by ear has been told, so that it cannot be tried again. */
    public void toldByEar() {
        isTold = true;
        question = null;
    }

    /** How many readable answers have been given to it. */
    public int tries() {
        return tries;
    }

    public boolean isOpen() {
        return question != null;
    }

    /** Whether a question for the ear is open: then no picture may show what sounds. */
    public boolean isByEar() {
        return question != null && question.isByEar();
    }

    /** The open question, or null. */
    public Question question() {
        return question;
    }

    /** The question that {@code why} is about, or null. */
    public Question lastQuestion() {
        return lastQuestion;
    }

    /** The last verdict on a readable answer to that question, or null. */
    public Verdict lastVerdict() {
        return lastVerdict;
    }

    /** The skill last asked by name, or null. */
    public Skill lastSkill() {
        return lastSkill;
    }

    /** Whether a readable answer has been given to the open question. */
    public boolean isTried() {
        return tries > 0;
    }

    /** Whether the first readable answer was right and no help was taken. */
    public boolean wasRightAtOnce() {
        return tries == 1 && hints == 0;
    }

    /**
     * Takes an answer that was judged; a right one closes the question. One that could not be read is no answer.
     *
     * @return the attempt to be kept; none if it could not be read
     */
    public Optional<Attempt> take(String text, Verdict verdict) {
        if (verdict.grade() == Grade.UNREADABLE) {
            return Optional.empty();
        }
        Attempt attempt = attempt(text, verdict);
        lastVerdict = verdict;
        since = attempt.time();
        tries++;
        if (verdict.grade().isRight()) {
            question = null;
        }
        return Optional.of(attempt);
    }

    private Attempt attempt(String text, Verdict verdict) {
        long now = clock.getAsLong();
        return new Attempt(
                now,
                lesson,
                question.skillId(),
                question.subject(),
                question.key().toString(),
                question.seed(),
                text,
                verdict.grade(),
                verdict.misconception() == null ? "" : verdict.misconception(),
                (int) Math.max(0, Math.min(Integer.MAX_VALUE, now - since)),
                hints,
                tries);
    }

    /** The next hint for the open question, the last one again when there are no more. */
    public String hint() {
        int next = Math.min(hints, question.hints().size() - 1);
        hints++;
        return question.hints().get(next);
    }

    public int hintsGiven() {
        return hints;
    }

    public void clear() {
        question = null;
    }
}
