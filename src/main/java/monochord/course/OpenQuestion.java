package monochord.course;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.IntStream;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.mastery.Attempt;
import monochord.text.Phrase;

/** The question that is open until it is answered rightly, told or left; it is remembered for {@code why}. */
public final class OpenQuestion {
    static final Phrase LAST_HINT = Phrase.sentence("That was the last hint; tell says the answer.");

    private final LongSupplier clock;
    private Question question;
    private String lesson = "";
    private long since;
    private Question lastQuestion;
    private Verdict lastVerdict;
    private Skill lastSkill;
    private String lastAnswer;
    private List<Phrase> steps = List.of();
    private int step;
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
        lastAnswer = null;
        steps = next.hints();
        step = 0;
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

    /** The verdict, or another help in its place where the same wrong answer has just been given. */
    public Verdict furtherHelp(String text, Verdict verdict) {
        return isRepeated(text, verdict)
                ? verdict.saying(Phrase.sentence("The same again.").then(steps.get(furtherStep(verdict))))
                : verdict;
    }

    /** The next step of help that the verdict has not said already; the last one where there is none. */
    private int furtherStep(Verdict verdict) {
        int next = Math.min(step, steps.size() - 1);
        while (next < steps.size() - 1
                && verdict.said().toString().contains(steps.get(next).toString())) {
            next++;
        }
        return next;
    }

    /** Which step of help a verdict on the same answer again has said. */
    private int saidStep(Verdict verdict) {
        return IntStream.range(step, steps.size())
                .filter(i -> verdict.said().toString().endsWith(steps.get(i).toString()))
                .findFirst()
                .orElse(step);
    }

    private boolean isRepeated(String text, Verdict verdict) {
        return !verdict.grade().isRight()
                && verdict.grade() != Grade.UNREADABLE
                && text.strip().equals(lastAnswer);
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
        since = attempt.time();
        tries++;
        if (isRepeated(text, verdict)) {
            step = 1 + saidStep(verdict);
        } else {
            lastVerdict = verdict;
            helpFrom(text, verdict);
        }
        if (verdict.grade().isRight()) {
            question = null;
        }
        return Optional.of(attempt);
    }

    /** Hints begin anew from a wrong answer that says where the learner is. */
    private void helpFrom(String text, Verdict verdict) {
        lastAnswer = text.strip();
        List<Phrase> next = verdict.grade().isRight() ? steps : question.hintsFrom(text);
        step = next.equals(steps) ? step : 0;
        steps = next;
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

    /** The next hint from where the learner is; the last one says that it is, and comes again when there are no more. */
    public Phrase hint() {
        Phrase hint = steps.get(Math.min(step, steps.size() - 1));
        step++;
        hints++;
        return step < steps.size() ? hint : hint.then(LAST_HINT);
    }

    public int hintsGiven() {
        return hints;
    }

    public void clear() {
        question = null;
    }
}
