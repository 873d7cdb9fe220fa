package monochord.shell.sitting;

import java.util.function.Predicate;
import monochord.course.LessonWalk;
import monochord.course.OpenActivities;
import monochord.course.OpenQuestion;
import monochord.course.QuestionRun;
import monochord.practice.Skill;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.course.DrillEnd;

/** What comes of itself once a question is done with, and what comes when something ends. */
record NextStep(Teaching teaching, Sitting sitting, OpenActivities underWay) {
    /** What comes of itself once a question is done with. */
    Answer advance() {
        if (underWay.isNamedQuestion()) {
            return leaveUppermost();
        }
        return underWay.run()
                .map(this::advanced)
                .orElseGet(() -> teaching.lesson().nextBelowVerdict(sitting));
    }

    private Answer advanced(QuestionRun run) {
        if (run.isOver(sitting.study().now())) {
            return endRun();
        }
        teaching.question().put(run.next(sitting.seeds()), "");
        sitting.study().ready();
        if (run.kind() == QuestionRun.RunKind.SET) {
            teaching.day().keepPlace(run);
        }
        Answer asked = teaching.silence().put();
        return DayTeaching.lead(run).map(lead -> Answers.of(lead, asked)).orElse(asked);
    }

    /** Goes on without questions of these skills: none of them comes in the run, and the one of a lesson is passed. */
    Answer without(Predicate<Skill> unwanted) {
        underWay.run().ifPresent(run -> run.leaveOut(unwanted));
        underWay.walk().ifPresent(LessonWalk::pass);
        return underWay.walk().isPresent() ? teaching.lesson().next(sitting) : advance();
    }

    /** The uppermost is done with; what waited below goes on at once if it was in the middle of a question. */
    Answer leaveUppermost() {
        teaching.question().clear();
        underWay.leave();
        return underWay.isInQuestion() ? advance() : Answers.of();
    }

    /** Ends the run that is being taken, and says how it went; a question nobody has tried does not count. */
    Answer endRun() {
        QuestionRun run = underWay.run().orElseThrow();
        underWay.leave();
        OpenQuestion question = teaching.question();
        if (question.isOpen() && (question.isTried() || question.hintsGiven() > 0)) {
            run.note(false);
        }
        question.clear();
        if (run.kind() == QuestionRun.RunKind.SET) {
            return teaching.day().end(run);
        }
        QuestionRun.Result result = run.result();
        return new DrillEnd(result.asked(), result.atOnce(), result.second(), result.missed());
    }
}
