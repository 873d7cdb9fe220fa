package monochord.shell.sitting;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.drill.Level;
import monochord.practice.drill.Turn;
import monochord.text.naming.AsTyped;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Saying;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;
import monochord.view.course.VerdictAnswer;

/** What is being taught: the question on the desk, the run or the lesson it belongs to, and what comes next. */
public final class Teaching {
    private static final String TRIED = "Try again, or: hint, why, tell. Enter leaves it and goes on.";
    private static final String UNTRIED = "Try again, or: hint, tell. skip leaves it and goes on.";

    private final Sitting sitting;
    private Course course;
    private Desk desk;
    private Drill drill;
    private Opening opening;
    private Presentation presentation;

    Teaching(Sitting sitting, Course course, LongSupplier clock) {
        this.sitting = sitting;
        this.course = course;
        this.desk = new Desk(clock);
    }

    /** Goes on where another stands: its question, its lesson. */
    void goOnFrom(Teaching other) {
        course = other.course;
        desk = other.desk;
        drill = other.drill;
        presentation = other.presentation;
    }

    public Course course() {
        return course;
    }

    public Desk desk() {
        return desk;
    }

    /** Puts a question that was asked for by name; a lesson or a run that is being taken waits. */
    public void ask(Skill skill, Question question) {
        setAside();
        desk.put(skill, question);
        sitting.study().ready();
    }

    /** A lesson's question comes back when the lesson goes on; one of a run is gone. */
    private void setAside() {
        sitting.stage().leaveContest();
        if (desk.isOpen() && !desk.isByName() && drill == null) {
            course.keep(desk.question());
        }
        desk.clear();
    }

    /** @param lesson the slug of the lesson that asks, empty if none does */
    void put(Question question, String lesson) {
        sitting.stage().leaveContest();
        desk.put(question, lesson);
        sitting.study().ready();
    }

    /** The open question in words, and to the ear if it is one for the ear. */
    public AskAnswer asked() {
        return Hearing.put(desk.question(), sitting.stage().ear());
    }

    /** Begins a run of questions, one turn at least, in place of one that was being taken; a lesson waits. */
    public Answer drill(List<Turn> turns) {
        return begin(Drill.of(turns, level()));
    }

    /** The same with what is due; what is missed comes back once at the end, and after so many minutes it is over. */
    public Answer review(List<Turn> turns, int minutes) {
        opening().reviewed();
        long until = sitting.study().now() + Duration.ofMinutes(minutes).toMillis();
        return begin(Drill.review(turns, until, level()));
    }

    private Level level() {
        return new Level(sitting.study().knowledge());
    }

    private Answer begin(Drill run) {
        setAside();
        presentation = null;
        drill = run;
        return nextInDrill();
    }

    private Answer nextInDrill() {
        if (drill.isOver(sitting.study().now())) {
            return endDrill();
        }
        put(drill.next(sitting.seeds()), "");
        return asked();
    }

    /** Nothing is open any more, for a lesson begins. */
    void clearForLesson() {
        presentation = null;
        desk.clearForLesson();
        drill = null;
    }

    /** Whether a run of questions is being taken. */
    public boolean isDrilling() {
        return drill != null;
    }

    /** Ends the run that is being taken, and says how it went; a question nobody has tried does not count. */
    public Answer endDrill() {
        if (desk.isTried() || desk.hintsGiven() > 0) {
            leaveQuestion();
        }
        desk.clear();
        Answer end = drill.end();
        drill = null;
        return end;
    }

    /** Judges an answer to the open question; after a right one goes on by itself in a lesson or a run. */
    public Answer answer(String typed) {
        Question question = desk.question();
        AsTyped text = NamedAnswer.answer(typed, question, sitting.naming());
        Verdict verdict = NamedAnswer.quoting(text, desk.answer(text.english()));
        if (verdict.grade() != Grade.UNREADABLE) {
            sitting.study().keep(desk.lastAttempt());
        }
        return sitting.study().withNotices(answer(question, verdict, text.english()));
    }

    private Answer answer(Question question, Verdict verdict, String text) {
        if (welcome().isPresent() && verdict.grade() != Grade.UNREADABLE) {
            return Answers.of(new VerdictAnswer(question, verdict, ""), opening.judged(verdict, sitting));
        }
        if (!verdict.grade().isRight()) {
            return new VerdictAnswer(question, verdict, next(question, verdict, text));
        }
        note(desk.wasRightAtOnce());
        return drill != null || course.isOpen()
                ? Answers.of(new VerdictAnswer(question, verdict, ""), goOn())
                : new VerdictAnswer(question, verdict, "Enter for another.");
    }

    /** What can be done after a wrong answer, or one that could not be read. */
    private String next(Question question, Verdict verdict, String text) {
        String heard = question.isByEar() && verdict.grade() != Grade.UNREADABLE
                ? Hearing.beside(question, text, sitting.stage().ear()) + "\n"
                : "";
        return heard + (isWaiting() ? UNTRIED : TRIED);
    }

    /** Whether Enter would only put the question again, since nothing yet was an answer to it. */
    private boolean isWaiting() {
        return welcome().isEmpty() && !desk.isTried();
    }

    /** Takes the open question off the desk without an answer. */
    public void leaveQuestion() {
        if (desk.isOpen()) {
            note(false);
            desk.clear();
        }
    }

    /** Counts what came of a question, if it was one of the run or the lesson. */
    private void note(boolean rightAtOnce) {
        if (desk.isByName()) {
            return;
        }
        if (drill != null) {
            drill.note(rightAtOnce);
        } else {
            course.noteAnswer(rightAtOnce);
        }
    }

    /** Begins to take a lesson with a room; the learner's own lesson waits. */
    Answer present(Presentation begun) {
        setAside();
        drill = null;
        presentation = begun;
        return goOn();
    }

    /** The lesson that is being taken with a room, if one is. */
    public Optional<Presentation> presentation() {
        return Optional.ofNullable(presentation);
    }

    /** Ends it. */
    public Answer endPresentation() {
        presentation = null;
        return Saying.of("The lesson is closed; nothing of it was kept.");
    }

    /** What comes next when the learner only says go on. */
    public Answer goOn() {
        boolean tired = sitting.stage().breaks().isDue();
        Answer next = presentation == null ? goOnAlone() : present();
        return tired ? Answers.of(Statement.of(Breaks.CAUTION), next) : next;
    }

    private Answer present() {
        Answer next = presentation.goOn(sitting);
        presentation = presentation.isOver() ? null : presentation;
        return next;
    }

    private Answer goOnAlone() {
        if (welcome().isPresent()) {
            leaveQuestion();
            return opening().begin(sitting);
        }
        if (desk.isOpen() && !desk.isTried()) {
            return asked();
        }
        leaveQuestion();
        if (drill != null) {
            return nextInDrill();
        }
        if (course.isOpen()) {
            return course.goOn(sitting);
        }
        return sitting.stage().contestOnEnter().isPresent()
                ? sitting.stage().contestOnEnter().get().heard(sitting)
                : desk.isByName() ? askAgain(desk.lastSkill()) : opening().begin(sitting);
    }

    /** Whether nothing waits that an empty line would go on with. */
    boolean isIdle() {
        return presentation == null && !desk.isOpen() && drill == null && !course.isOpen();
    }

    private Answer askAgain(Skill skill) {
        Question last = desk.lastQuestion();
        ask(
                skill,
                last.isByEar()
                        ? level().another(skill, sitting.seeds(), last)
                        : new Turn(skill, sitting.key()).question(sitting.seeds(), last));
        return asked();
    }

    /** How a sitting opens, on this day. */
    public Opening opening() {
        if (opening == null) {
            opening = new Opening(sitting.study().agenda(), sitting.study().now());
            course.resume(opening.lesson());
        }
        return opening;
    }

    /** The questions to someone new, as long as they are being asked. */
    public Optional<Opening> welcome() {
        return Optional.ofNullable(opening).filter(Opening::isAsking);
    }

    /** The lesson that the sitting opened with; empty if it has not opened, or with none. */
    String openedWith() {
        return opening == null ? "" : opening.lesson();
    }
}
