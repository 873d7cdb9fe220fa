package monochord.course;

import java.util.Deque;
import java.util.Optional;
import java.util.concurrent.ConcurrentLinkedDeque;

/**
 * What is under way at the line, in one pile: the line goes on with the uppermost, and what lies below waits for it, with
 * its question. A rehearsal may leave from its own thread.
 */
public final class OpenActivities {
    private final Deque<Activity> pile = new ConcurrentLinkedDeque<>();

    /** What begins takes the place of what stands as near to the line. */
    public void begin(Activity next) {
        while (!pile.isEmpty() && pile.peek().nearness() >= next.nearness()) {
            pile.pop();
        }
        pile.push(next);
    }

    /** The uppermost is done with. */
    public void leave() {
        pile.pop();
    }

    /** That one is done with, wherever it stands. */
    public void leave(Activity over) {
        pile.remove(over);
    }

    public boolean isNothing() {
        return pile.isEmpty();
    }

    /** The uppermost if it is of that kind. */
    private <T extends Activity> Optional<T> now(Class<T> kind) {
        return Optional.ofNullable(pile.peek()).filter(kind::isInstance).map(kind::cast);
    }

    /** The first questions to someone new, if the line goes on with them. */
    public Optional<FirstQuestions> firstStart() {
        return now(FirstQuestions.class);
    }

    /** The run of questions or the review, if the line goes on with one. */
    public Optional<QuestionRun> run() {
        return now(QuestionRun.class);
    }

    /** The lesson, if the line goes on with one. */
    public Optional<LessonWalk> walk() {
        return now(LessonWalk.class);
    }

    /** The lesson before a class, if the line goes on with one. */
    public Optional<RoomLesson> room() {
        return now(RoomLesson.class);
    }

    /** The rehearsal, if the line goes on with one. */
    public Optional<RehearsalUnderWay> rehearsal() {
        return now(RehearsalUnderWay.class);
    }

    /** Whether the line goes on with a question that was asked for by name. */
    public boolean isNamedQuestion() {
        return now(NamedQuestion.class).isPresent();
    }

    /** Whether that is so, and nothing waits below. */
    public boolean isNamedQuestionAlone() {
        return isNamedQuestion() && pile.size() == 1;
    }

    /** Whether a lesson is being taken, though perhaps something else comes first. */
    public boolean isInLesson() {
        return pile.stream().anyMatch(LessonWalk.class::isInstance);
    }

    /** Whether the uppermost was left in the middle of a question. */
    public boolean isInQuestion() {
        return run().isPresent() || walk().filter(LessonWalk::isAsking).isPresent();
    }

    /** Counts what came of a question, if it was one of a run or a lesson. */
    public void note(boolean rightAtOnce) {
        run().ifPresent(run -> run.note(rightAtOnce));
        walk().ifPresent(walk -> walk.note(rightAtOnce));
    }

    /**
     * How far it has come.
     *
     * @param asking whether a question is open
     */
    public Optional<Position> place(boolean asking) {
        return walk().map(walk -> asking ? walk.place() : walk.page())
                .or(() -> run().map(QuestionRun::place))
                .or(() -> room().map(RoomLesson::place))
                .or(() -> firstStart().map(FirstQuestions::place));
    }
}
