package monochord.shell.sitting;

import java.util.Optional;
import monochord.course.LessonWalk;
import monochord.course.OpenActivities;
import monochord.course.QuestionRun;
import monochord.course.RoomLesson;
import monochord.course.rehearsal.RoundResult;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Turn;
import monochord.shell.line.LineMode;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/**
 * What Enter, {@code skip}, {@code back} and {@code hint} do with what is under way: one case a mode, as the table in
 * {@link LineMode} says.
 *
 * @param lesson the one that is being taken, or null
 * @param room the one before a class, or null
 */
record LineMoves(
        Teaching teaching, Sitting sitting, OpenActivities underWay, LessonTeaching lesson, ClassTeaching room) {
    /** What Enter does. */
    Answer enter() {
        return switch (teaching.mode()) {
            case NAMES, FIRST_QUESTION -> passFirstQuestion();
            case QUESTION -> leaveQuestion();
            case ANSWERED -> askAnother();
            case RUN, REVIEW, SET, AT_INSTRUMENT -> passInRun();
            case ROUND_PLAYED -> teaching.rehearsing().went(RoundResult.clean());
            case REHEARSAL -> teaching.rehearsing().again();
            case TOLD -> teaching.next().advance();
            case NO_SOUND -> teaching.silence().leave();
            case LESSON_QUESTION -> passInLesson(false);
            case LESSON_PAGE, LESSON_JAVA -> lesson.next(sitting);
            case CLASS, CLASS_QUESTION -> nextBeforeClass();
            default -> teaching.opening().begin(sitting);
        };
    }

    private Answer passFirstQuestion() {
        teaching.question().clear();
        return teaching.firstStart().follow(underWay.firstStart().orElseThrow().pass());
    }

    private Answer leaveQuestion() {
        return Answers.of(
                Statement.of(Phrase.sentence("We leave it. ask asks another of its kind.")),
                teaching.next().leaveUppermost());
    }

    private Answer passInRun() {
        QuestionRun run = underWay.run().orElseThrow();
        if (teaching.question().isTried()) {
            run.note(false);
        } else {
            run.pass();
        }
        teaching.question().clear();
        return teaching.next().advance();
    }

    private Answer passInLesson(boolean all) {
        LessonWalk walk = lesson.walk();
        if (teaching.question().isTried()) {
            walk.note(false);
        }
        if (all) {
            walk.passAll();
        } else {
            walk.pass();
        }
        teaching.question().clear();
        return lesson.next(sitting);
    }

    private Answer nextBeforeClass() {
        Answer next = room.next(sitting);
        if (underWay.room().filter(RoomLesson::isOver).isPresent()) {
            underWay.leave();
        }
        return next;
    }

    private Answer askAnother() {
        Skill skill = teaching.question().lastSkill();
        Question last = teaching.question().lastQuestion();
        Optional<Key> key = teaching.askedIn();
        Question next = last.isByEar() && key.isEmpty()
                ? teaching.level().another(skill, sitting.seeds(), last)
                : new Turn(skill, key.orElseGet(sitting::key)).question(sitting.seeds(), last);
        teaching.ask(skill, next, key);
        return teaching.asked();
    }
    /** What {@code skip} does; none where there is nothing to skip. */
    Optional<Answer> skip() {
        return switch (teaching.mode()) {
            case NAMES, FIRST_QUESTION ->
                Optional.of(teaching.firstStart()
                        .follow(underWay.firstStart().orElseThrow().found()));
            case QUESTION -> Optional.of(leaveQuestion());
            case ANSWERED ->
                Optional.of(Answers.of(
                        Statement.of(Phrase.sentence("Done with that.")),
                        teaching.next().leaveUppermost()));
            case RUN, REVIEW -> Optional.of(teaching.endRun());
            case SET -> Optional.of(cutOff());
            case TOLD -> Optional.of(endTold());
            case ROUND_PLAYED, REHEARSAL -> Optional.of(teaching.rehearsing().end());
            case NO_SOUND -> Optional.of(teaching.silence().leave());
            case AT_INSTRUMENT -> Optional.of(passInRun());
            case LESSON_QUESTION -> Optional.of(passInLesson(true));
            case LESSON_JAVA -> Optional.of(lesson.passCodeBy(sitting));
            case LESSON_PAGE -> Optional.of(leaveLesson());
            case CLASS, CLASS_QUESTION -> Optional.of(endClass());
            default -> Optional.empty();
        };
    }

    private Answer endTold() {
        return underWay.run().orElseThrow().kind() == QuestionRun.RunKind.SET ? cutOff() : teaching.endRun();
    }

    /** What is left of the day's set waits. */
    private Answer cutOff() {
        teaching.day().keepPlace(underWay.run().orElseThrow());
        teaching.question().clear();
        underWay.leave();
        sitting.linePlace().isSaidThere();
        return teaching.day().cutOff();
    }

    private Answer leaveLesson() {
        underWay.leave();
        return lesson.leave(sitting);
    }

    private Answer endClass() {
        underWay.leave();
        return Statement.of(Phrase.sentence("The lesson is closed; nothing of it was kept."));
    }

    /** What {@code back} does; none where there is nothing to go back to. */
    Optional<Answer> back() {
        return switch (teaching.mode()) {
            case LESSON_PAGE, LESSON_QUESTION, LESSON_JAVA -> Optional.of(lesson.back(sitting));
            case CLASS, CLASS_QUESTION -> Optional.of(room.back(sitting));
            case ROUND_PLAYED -> Optional.of(teaching.rehearsing().again());
            default -> Optional.empty();
        };
    }

    /** What {@code hint} says; none where nothing is open to help with. */
    Optional<Answer> hint() {
        if (teaching.mode() == LineMode.NO_SOUND) {
            return Optional.empty();
        }
        if (underWay.rehearsal().isPresent()) {
            return Optional.of(teaching.rehearsing().help());
        }
        if (teaching.question().isOpen()) {
            if (teaching.homework().filter(its -> !its.givesHints()).isPresent()) {
                return Optional.of(Statement.of(Phrase.sentence("This is to be done without hints.")));
            }
            return Optional.of(Statement.of(teaching.question().hint()));
        }
        return teaching.mode() == LineMode.CLASS_QUESTION
                ? Optional.of(Statement.of(underWay.room().orElseThrow().hint()))
                : Optional.of(teaching.mode().advice())
                        .filter(advice -> !advice.isEmpty()
                                && LineMode.isSomething(teaching.mode().hint()))
                        .map(Statement::of);
    }
}
