package monochord.shell.sitting;

import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.course.Activity;
import monochord.course.Course;
import monochord.course.DailySet;
import monochord.course.JudgedAnswer;
import monochord.course.LessonWalk;
import monochord.course.NamedQuestion;
import monochord.course.OpenActivities;
import monochord.course.OpenQuestion;
import monochord.course.Position;
import monochord.course.RehearsalUnderWay;
import monochord.course.RoomLesson;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Difficulty;
import monochord.practice.drill.Turn;
import monochord.shell.line.LineMode;
import monochord.shell.playback.Hearing;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.course.AskAnswer;

/**
 * What is being taught: begins it, and takes the answers. {@link LineMode} says what Enter and the words beside it do with
 * what is under way.
 */
public final class Teaching {
    private final Sitting sitting;
    private final Rehearsing rehearsing;
    private OpenActivities underWay = new OpenActivities();
    private Course course;
    private OpenQuestion question;
    private LessonTeaching lesson;
    private ClassTeaching room;
    private Optional<Key> askedIn = Optional.empty();
    private Opening opening;
    private final DayTeaching day;
    private final SilentEarQuestions silence;

    Teaching(Sitting sitting, Course course, LongSupplier clock) {
        this.sitting = sitting;
        this.rehearsing = new Rehearsing(sitting);
        this.course = course;
        this.question = new OpenQuestion(clock);
        this.day = new DayTeaching(sitting);
        this.silence = new SilentEarQuestions(sitting);
    }

    /** Goes on where another stands: its question, its lesson. */
    void goOnFrom(Teaching other) {
        course = other.course;
        question = other.question;
        underWay = other.underWay;
        lesson = other.lesson;
        room = other.room;
        askedIn = other.askedIn;
    }

    public Course course() {
        return course;
    }

    /** The question that is open, or was last. */
    public OpenQuestion question() {
        return question;
    }

    /** The lesson that is being taken, or was last; null before the first. */
    LessonTeaching lesson() {
        return lesson;
    }

    /** The assignment that the line goes on with, if it is one; its question is open. */
    public Optional<HomeworkTeaching> homework() {
        return underWay.walk().isEmpty() || lesson == null
                ? Optional.empty()
                : lesson.homework().filter(its -> question.lastQuestion() != null && its.asks(question.lastQuestion()));
    }

    /** What the line is there for. */
    LineMode mode() {
        if (silence.isAsking()) {
            return LineMode.NO_SOUND;
        }
        return LineMode.of(underWay, question.isOpen(), lesson != null && lesson.isJavaWaiting());
    }

    /** How far what is under way has come. */
    Optional<Position> place() {
        return underWay.place(question.isOpen());
    }

    /** What Enter does in that mode, and what hears a page again. */
    Phrase row(LineMode mode) {
        boolean plays = mode == LineMode.LESSON_PAGE
                && underWay.walk().filter(LessonWalk::endsWithMusic).isPresent();
        if (mode == LineMode.LESSON_JAVA) {
            return mode.fullRow();
        }
        return plays ? Phrase.sentence("Enter {0}; play hears it again.", mode.enter()) : mode.row();
    }

    /** The run of questions that is being taken, if the line goes on with one. */
    public boolean isInRun() {
        return underWay.run().isPresent();
    }

    /** Whether a lesson is being taken, though perhaps something else comes first. */
    public boolean isInLesson() {
        return underWay.isInLesson();
    }

    /** The lesson before a class, if the line goes on with one. */
    public Optional<ClassTeaching> room() {
        return underWay.room().map(shown -> room);
    }

    /** The question that the class looks at. */
    public Optional<Question> roomQuestion() {
        return underWay.room().flatMap(RoomLesson::question);
    }

    /** How a sitting opens, on this day. */
    public Opening opening() {
        if (opening == null) {
            opening = new Opening(
                    course.stillThere(sitting.study().agenda(), sitting.study().bookmarks()::isDone),
                    sitting.study().now());
            course.resume(opening.lesson());
        }
        return opening;
    }

    /** The lesson that the sitting opened with; empty if it has not opened, or with none. */
    String openedWith() {
        return opening == null ? "" : opening.lesson();
    }

    /** What begins has the line; the rest waits. */
    void begin(Activity next) {
        question.clear();
        underWay.begin(next);
    }

    /** What is rehearsed at the instrument. */
    public Rehearsing rehearsing() {
        return rehearsing;
    }

    void begin(RehearsalUnderWay rehearsal) {
        begin((Activity) rehearsal);
    }

    /** The rehearsal, if the line goes on with one. */
    Optional<RehearsalUnderWay> rehearsal() {
        return underWay.rehearsal();
    }

    void leave(RehearsalUnderWay over) {
        underWay.leave(over);
    }

    /** The first questions to someone new, and where they lead. */
    public FirstStart firstStart() {
        return new FirstStart(this, sitting, underWay);
    }

    /** Puts a question that was asked for by name, in no key that was named. */
    public void ask(Skill skill, Question named) {
        ask(skill, named, Optional.empty());
    }

    /**
     * Puts a question that was asked for by name; what is under way waits.
     *
     * @param key that was named with it, if one was
     */
    public void ask(Skill skill, Question named, Optional<Key> key) {
        begin(new NamedQuestion());
        askedIn = key;
        question.put(skill, named);
        sitting.study().ready();
    }

    /** The key that was named with the last question asked by name; another of its kind is asked there, too. */
    public Optional<Key> askedIn() {
        return askedIn;
    }

    /** The open question in words, and to the ear if it is one for the ear. */
    public AskAnswer asked() {
        return Hearing.put(question.question(), sitting.stage().ear());
    }

    /** Begins runs of questions, reviews and the day's set. */
    public RunTeaching runs() {
        return new RunTeaching(this, sitting);
    }

    DayTeaching day() {
        return day;
    }

    /** What becomes of questions for the ear where nothing sounds. */
    public SilentEarQuestions silence() {
        return silence;
    }

    /** What to ask somebody who names nothing: what a day's set would begin with, in the easiest of its keys. */
    public Turn suggested(long seed) {
        return DailySet.of(day.learner(), sitting.study().now(), seed).turns().get(0);
    }

    /** How far the learner is. */
    public Difficulty level() {
        return new Difficulty(sitting.study().knowledge());
    }

    /** Has the line go on with that lesson. */
    void begin(LessonTeaching begun) {
        lesson = begun;
        begin(begun.walk());
    }

    /** Has the line go on with that lesson before a class. */
    ClassTeaching begin(RoomLesson shown) {
        begin((Activity) shown);
        room = new ClassTeaching(shown);
        return room;
    }

    void lessonIsOver(LessonTeaching over) {
        underWay.leave(over.walk());
    }

    /** The verdict on an answer to the open question, which nothing hangs on yet. */
    public JudgedAnswer judge(String typed) {
        return answers().judge(typed);
    }

    /** Takes an answer that was judged: keeps it, says the verdict, and after a right one goes on by itself. */
    public Answer take(JudgedAnswer judged) {
        return answers().take(judged);
    }

    /** Judges an answer and takes it. */
    public Answer answer(String typed) {
        return take(judge(typed));
    }

    /** Tells the answer to the open question, which counts as not known, and goes on. */
    public Answer tell() {
        return answers().tell();
    }

    private AnswerTaking answers() {
        return new AnswerTaking(this, sitting, underWay);
    }

    NextStep next() {
        return new NextStep(this, sitting, underWay);
    }

    /** What Enter does. */
    public Answer goOn() {
        return sitting.stage().breaks().before(() -> moves().enter());
    }

    /** What {@code skip} does; none where there is nothing to skip. */
    public Optional<Answer> skip() {
        return moves().skip();
    }

    /** What {@code back} does; none where there is nothing to go back to. */
    public Optional<Answer> back() {
        return moves().back();
    }

    /** What {@code hint} says; none where nothing is open to help with. */
    public Optional<Answer> hint() {
        return moves().hint();
    }

    private LineMoves moves() {
        return new LineMoves(this, sitting, underWay, lesson, room);
    }

    /** Ends the run that is being taken, and says how it went. */
    public Answer endRun() {
        return next().endRun();
    }
}
