package monochord.shell.sitting;

import java.time.Duration;
import java.util.List;
import monochord.course.QuestionRun;
import monochord.practice.drill.Turn;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** Begins runs of questions: those somebody chose, what is due, and the day's set. A lesson waits meanwhile. */
public record RunTeaching(Teaching teaching, Sitting sitting) {
    /** Begins a run of questions, one turn at least, in place of one that was being taken; a lesson waits. */
    public Answer practise(List<Turn> turns) {
        teaching.begin(QuestionRun.of(turns, teaching.level()));
        return teaching.next().advance();
    }

    /** The same with what is due; what is missed comes back once at the end, and after so many minutes it is over. */
    public Answer review(List<Turn> turns, int minutes) {
        teaching.opening().reviewed();
        long until = sitting.study().now() + Duration.ofMinutes(minutes).toMillis();
        teaching.begin(QuestionRun.review(turns, until, teaching.level()));
        Phrase head = Phrase.counted(
                turns.size(),
                "One thing to bring back, weakest first. skip ends it.",
                "{0} things to bring back, weakest first. skip ends it.",
                turns.size());
        return Answers.of(Statement.of(head), teaching.next().advance());
    }

    /** Begins the day's set, or goes on with the one that was cut off; a lesson waits. */
    public Answer daily(long seed) {
        teaching.opening().reviewed();
        QuestionRun run = teaching.day().begin(seed);
        Phrase head = teaching.day().head(run);
        teaching.begin(run);
        return sitting.study()
                .withNotices(Answers.of(Statement.of(head), teaching.next().advance()));
    }
}
