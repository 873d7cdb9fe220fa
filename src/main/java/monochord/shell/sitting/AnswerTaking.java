package monochord.shell.sitting;

import java.util.List;
import java.util.Optional;
import monochord.course.JudgedAnswer;
import monochord.course.OpenActivities;
import monochord.course.OpenQuestion;
import monochord.practice.Excerpt;
import monochord.practice.Question;
import monochord.practice.mastery.Attempt;
import monochord.shell.playback.Hearing;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Refusal;
import monochord.view.Statement;
import monochord.view.course.VerdictAnswer;

/** Takes answers to the open question: judges and keeps them, says the verdict, and what comes after it. */
record AnswerTaking(Teaching teaching, Sitting sitting, OpenActivities underWay) {
    private OpenQuestion question() {
        return teaching.question();
    }

    private SilentEarQuestions silence() {
        return teaching.silence();
    }

    /** The verdict on an answer to the open question, which nothing hangs on yet. */
    JudgedAnswer judge(String typed) {
        JudgedAnswer judged = JudgedAnswer.of(typed, question().question(), sitting.naming());
        boolean helps = teaching.homework().map(HomeworkTeaching::givesHints).orElse(true);
        return helps ? judged.saying(question().furtherHelp(judged.text().english(), judged.verdict())) : judged;
    }

    /** Takes an answer that was judged: keeps it, says the verdict, and after a right one goes on by itself. */
    Answer take(JudgedAnswer whole) {
        Question taken = question().question();
        JudgedAnswer judged =
                isFirstWrongByEar(whole) ? whole.listeningAgain(silence().isHeard()) : whole;
        Optional<HomeworkTeaching> homework = teaching.homework();
        boolean isLast = homework.filter(its -> its.isLastTry(taken)).isPresent();
        Optional<Attempt> attempt = question().take(judged.text().english(), judged.verdict());
        homework.ifPresent(
                its -> its.take(judged, question(), attempt.map(Attempt::millis).orElse(0), sitting));
        attempt.filter(one -> !silence().spares(taken))
                .filter(one -> homework.map(HomeworkTeaching::counts).orElse(true))
                .ifPresent(sitting.study()::keep);
        if (homework.isPresent() && (judged.isRead() || !homework.get().counts())) {
            if (homework.get().isJudgedLater()) {
                return sitting.study().withNotices(goOn(Statement.of(HomeworkTeaching.noted()), judged));
            }
            if (isLast && !judged.verdict().grade().isRight()) {
                Answer verdict = new VerdictAnswer(judged.question(), judged.verdict(), List.of());
                return sitting.study().withNotices(goOn(verdict, judged));
            }
        }
        return sitting.study().withNotices(said(judged));
    }

    /** Says it to an answer that cannot be tried again, and goes on. */
    private Answer goOn(Answer said, JudgedAnswer judged) {
        underWay.note(judged.verdict().grade().isRight() && question().wasRightAtOnce());
        question().clear();
        return Answers.of(said, teaching.next().advance());
    }

    /** It may be tried again, so neither the verdict nor {@code why} says what it was. */
    private boolean isFirstWrongByEar(JudgedAnswer judged) {
        return judged.question().isByEar()
                && judged.isRead()
                && !judged.verdict().grade().isRight()
                && !question().isTried()
                && underWay.firstStart().isEmpty();
    }

    private Answer said(JudgedAnswer judged) {
        Answer plain = new VerdictAnswer(judged.question(), judged.verdict(), List.of());
        if (underWay.firstStart().isPresent() && judged.isRead()) {
            return Answers.of(
                    plain,
                    teaching.firstStart().follow(underWay.firstStart().get().judged(judged.verdict())));
        }
        if (!judged.verdict().grade().isRight()) {
            return judged.question().isByEar() && judged.isRead()
                    ? wrongByEar(judged)
                    : new VerdictAnswer(judged.question(), judged.verdict(), List.of(tryAgain()));
        }
        underWay.note(question().wasRightAtOnce());
        return underWay.isNamedQuestionAlone()
                ? plain
                : Answers.of(plain, teaching.next().advance());
    }

    /** What can be done after a wrong answer, or one that could not be read. */
    private Phrase tryAgain() {
        if (teaching.homework().isPresent()) {
            return teaching.homework().get().tryAgain(question().isTried());
        }
        return question().isTried()
                ? Phrase.sentence("Try again, or: hint, why, tell.")
                : Phrase.sentence("Try again, or: hint, tell.");
    }

    /** By ear the first wrong answer is followed by another hearing, the second by the answer, beside one's own. */
    private Answer wrongByEar(JudgedAnswer judged) {
        if (question().tries() == 1) {
            Phrase played = silence().isHeard() ? heard(judged.question().heard()) : Phrase.NOTHING;
            return new VerdictAnswer(judged.question(), judged.verdict(), lines(played, tryAgain()));
        }
        Phrase both = silence().writesFiles()
                ? heard(judged.question().heardBeside(judged.text().english()))
                : Hearing.beside(
                        judged.question(),
                        judged.text().english(),
                        sitting.stage().ear());
        underWay.note(false);
        question().toldByEar();
        sitting.linePlace().isSaidThere();
        return new VerdictAnswer(
                judged.question(), judged.verdict(), lines(both, teaching.mode().row()));
    }

    private Phrase heard(Optional<Excerpt> excerpt) {
        return silence().writesFiles()
                ? excerpt.map(silence()::write).orElse(Phrase.NOTHING)
                : Hearing.again(excerpt, sitting.stage().ear());
    }

    private static List<Phrase> lines(Phrase heard, Phrase now) {
        return heard.isEmpty() ? List.of(now) : List.of(heard, now);
    }

    /** Tells the answer to the open question, which counts as not known, and goes on. */
    Answer tell() {
        if (teaching.homework().isPresent()) {
            return new Refusal(
                    Phrase.sentence("The answers come with the marking."),
                    1,
                    teaching.mode().row());
        }
        Question told = question().question();
        question().clear();
        underWay.note(false);
        Answer way = Statement.of(told.derivation());
        if (underWay.isNamedQuestionAlone()) {
            return way;
        }
        return Answers.of(
                way,
                underWay.firstStart().isPresent()
                        ? teaching.firstStart()
                                .follow(underWay.firstStart().get().pass())
                        : sitting.stage().breaks().before(teaching.next()::advance));
    }
}
