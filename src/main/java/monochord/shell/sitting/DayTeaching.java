package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import monochord.course.DailySet;
import monochord.course.QuestionRun;
import monochord.course.ReviewSet;
import monochord.practice.Skill;
import monochord.practice.drill.Difficulty;
import monochord.practice.drill.Tally;
import monochord.practice.drill.Turn;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.record.KeptSet;
import monochord.shell.storage.LearnerRecord;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.view.Answer;
import monochord.view.Statement;
import monochord.view.course.SetEnd;

/** Puts the day's set together, or goes on with it; keeps how far it has come, and says what came of it. */
final class DayTeaching {
    private static final Phrase AT_INSTRUMENT = Phrase.sentence(
                    "Now for the hands: find this at your instrument, the right hand alone, the left, then both.")
            .then(Phrase.sentence(
                    "A connected keyboard is heard as your answer; else type done, which counts for nothing."));

    private final Sitting sitting;
    private Knowledge before = Knowledge.none();
    private KeptSet kept;

    DayTeaching(Sitting sitting) {
        this.sitting = sitting;
    }

    /** Whether a set was cut off today. */
    boolean isUnderWay() {
        return kept().isUnderWay(sitting.study().now());
    }

    private KeptSet kept() {
        if (kept == null) {
            kept = sitting.study().keptSet();
        }
        return kept;
    }

    /** The set that was cut off today, else a new one. */
    QuestionRun begin(long seed) {
        LearnerRecord study = sitting.study();
        DailySet.Learner learner = learner();
        before = learner.knowledge();
        DailySet set = DailySet.of(learner, study.now(), seed);
        if (isUnderWay()) {
            List<Turn> rest = kept.ahead().stream()
                    .flatMap(item -> ReviewSet.turn(item).stream())
                    .toList();
            set = rest.isEmpty() ? set : new DailySet(rest, Optional.empty(), set.hands());
        } else {
            kept = new KeptSet(study.now(), items(set.turns()), Tally.NONE, kept().last());
        }
        return QuestionRun.set(set, kept.now(), new Difficulty(before));
    }

    /** What is said before the first question. */
    Phrase head(QuestionRun run) {
        return run.place().at() > 0
                ? Phrase.sentence("On with today's set; skip leaves the rest for later.")
                : Phrase.sentence(
                        "Today's set: {0} questions and one thing for the hands, keys mixed; skip leaves the rest for later.",
                        run.rest().size());
    }

    DailySet.Learner learner() {
        Predicate<Skill> askable = skill -> !sitting.teaching().silence().leavesOut(skill);
        return new DailySet.Learner(sitting.study().knowledge(), book(), askable);
    }

    /** The book of the lesson that comes next. */
    private int book() {
        String title = sitting.teaching().opening().nextLesson();
        if (sitting.course().isRead()) {
            title = sitting.course().next().map(entry -> entry.number()).orElse("");
        }
        String number = title.replaceAll("\\..*", "");
        return number.matches("[0-9]{1,2}") ? Integer.parseInt(number) : 1;
    }

    /** Keeps how far it has come. */
    void keepPlace(QuestionRun run) {
        QuestionRun.Result result = run.result();
        kept = new KeptSet(kept.begun(), items(run.rest()), new Tally(result.asked(), result.atOnce()), kept.before());
        sitting.study().keep(kept);
    }

    private static List<SkillInKey> items(List<Turn> turns) {
        return turns.stream()
                .map(turn -> new SkillInKey(turn.skill().id(), turn.key().toString()))
                .toList();
    }

    /** What is said before a question where something has changed: easier, harder, or for the hands. */
    static Optional<Answer> lead(QuestionRun run) {
        if (run.isAtInstrument()) {
            return Optional.of(Statement.of(AT_INSTRUMENT));
        }
        return switch (run.pacing()) {
            case AS_BEFORE -> Optional.empty();
            case EASIER ->
                Optional.of(Statement.of(Phrase.sentence("An easier one now.").styled(Style.QUIET)));
            case HARDER ->
                Optional.of(Statement.of(Phrase.sentence("A harder one now.").styled(Style.QUIET)));
        };
    }

    /** How it went, with what is better than last time and what tomorrow brings. */
    Answer end(QuestionRun run) {
        keepPlace(run);
        return isUnderWay() ? cutOff() : report();
    }

    /** What is left of it waits. */
    Answer cutOff() {
        return Statement.of(Phrase.sentence("The rest of the set waits; Enter or practise goes on with it."));
    }

    private Answer report() {
        return new SetEnd(
                DailySet.report(kept, before, learner(), sitting.study().now()));
    }
}
