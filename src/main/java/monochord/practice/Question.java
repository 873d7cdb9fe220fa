package monochord.practice;

import java.util.List;
import java.util.Optional;
import monochord.text.Phrase;
import monochord.theory.Key;

/**
 * One question, its judge, and the way to its answer. Two questions are equal when they ask the same under the same seed.
 *
 * <p>All sentences carry the signs of printed music; {@link #expected} is ASCII.
 */
public final class Question {
    private final Topic topic;
    private final long seed;
    private final Task task;
    private final Listening listening;

    /** What is asked, in which form the answer comes, who judges it and who helps. */
    private record Task(AnswerForm form, Phrase prompt, Judge judge, Coaching coaching) {}

    private Question(Topic topic, long seed, Task task, Listening listening) {
        this.topic = topic;
        this.seed = seed;
        this.task = task;
        this.listening = listening;
    }

    public static Question of(Topic topic, AnswerForm form, Phrase prompt, Judge judge, Coaching coaching) {
        return new Question(topic, 0, new Task(form, prompt, judge, coaching), null);
    }

    /** The same question, marked as drawn with this seed. */
    public Question withSeed(long newSeed) {
        return new Question(topic, newSeed, task, listening);
    }

    /** The same question with something to hear, without which it cannot be answered. */
    public Question byEar(Listening heard) {
        return new Question(topic, seed, task, heard);
    }

    public String skillId() {
        return topic.skill();
    }

    /** The subject in its canonical text. */
    public String subject() {
        return topic.subject();
    }

    public Key key() {
        return topic.key();
    }

    /** The seed it was drawn with; 0 if the subject was given. */
    public long seed() {
        return seed;
    }

    public AnswerForm form() {
        return task.form();
    }

    public Phrase prompt() {
        return task.prompt();
    }

    /** Whether it is about something to be heard; then neither subject nor picture may be shown before the answer. */
    public boolean isByEar() {
        return listening != null;
    }

    /** What sounds when it is put, if it is a question for the ear. */
    public Optional<Excerpt> heard() {
        return Optional.ofNullable(listening).map(listened -> listened.asked().get());
    }

    /** What an answer would have sounded like, and then what sounded; nothing for an answer that cannot be read. */
    public Optional<Excerpt> heardBeside(String answer) {
        return Optional.ofNullable(listening)
                .flatMap(heard -> heard.as()
                        .apply(answer)
                        .map(given -> given.then(heard.asked().get())));
    }

    /** Judges any text whatever; it never throws. */
    public Verdict judge(String answer) {
        return task.judge().judge(answer);
    }

    public String expected() {
        return task.judge().expected();
    }

    /** Three: a nudge, the first move, all but the last step. */
    public List<Phrase> hints() {
        return task.coaching().hints();
    }

    /** The way to the answer, as a teacher would say it at the keyboard. */
    public Phrase derivation() {
        return task.coaching().derivation();
    }

    /**
     * How to go on from a wrong answer: what of it is right, then the step that failed; the hints of the question where there
     * is nothing better.
     */
    public List<Phrase> hintsFrom(String answer) {
        List<Phrase> help = task.judge().help(answer);
        return help.isEmpty() ? hints() : help;
    }

    /**
     * Why a verdict was given: to a right answer the way to it; to a wrong one the rule, and where this answer broke it. It
     * says nothing of what is missing, and neither does an answer that was not read.
     */
    public Phrase explain(Verdict verdict) {
        if (verdict.grade() == Grade.UNREADABLE) {
            return verdict.message();
        }
        if (verdict.grade().isRight()) {
            return derivation();
        }
        return Misconception.find(verdict.misconception())
                .map(broken -> broken.rule().then(verdict.said()))
                .orElse(verdict.said());
    }

    /** What each wrong procedure gives here; one that gives the right answer is left out. */
    public List<Mistake> mistakes() {
        return task.judge().mistakes();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Question that && topic.equals(that.topic) && seed == that.seed;
    }

    @Override
    public int hashCode() {
        return topic.hashCode() + Long.hashCode(seed);
    }

    @Override
    public String toString() {
        return topic.skill() + " of " + topic.subject() + " in " + topic.key();
    }
}
