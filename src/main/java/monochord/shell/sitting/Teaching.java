package monochord.shell.sitting;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import monochord.course.Activity;
import monochord.course.Course;
import monochord.course.FirstQuestions;
import monochord.course.JudgedAnswer;
import monochord.course.LessonWalk;
import monochord.course.NamedQuestion;
import monochord.course.OpenQuestion;
import monochord.course.Place;
import monochord.course.QuestionRun;
import monochord.course.RehearsalUnderWay;
import monochord.course.RoomLesson;
import monochord.course.UnderWay;
import monochord.practice.Excerpt;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Level;
import monochord.practice.drill.Turn;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;
import monochord.view.course.VerdictAnswer;

/**
 * What is being taught: begins it, and takes the answers. {@link LineMode} says what Enter and the words beside it do with
 * what is under way.
 */
public final class Teaching {
    private final Sitting sitting;
    private UnderWay underWay = new UnderWay();
    private Course course;
    private OpenQuestion question;
    private LessonTeaching lesson;
    private ClassTeaching room;
    private Optional<Key> askedIn = Optional.empty();
    private Opening opening;
    private final DayTeaching day;
    private final Silence silence;

    Teaching(Sitting sitting, Course course, LongSupplier clock) {
        this.sitting = sitting;
        this.course = course;
        this.question = new OpenQuestion(clock);
        this.day = new DayTeaching(sitting);
        this.silence = new Silence(sitting);
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

    /** What the line is there for. */
    LineMode mode() {
        if (silence.isAsking()) {
            return LineMode.NO_SOUND;
        }
        return LineMode.of(underWay, question.isOpen(), lesson != null && lesson.isJavaWaiting());
    }

    /** How far what is under way has come. */
    Optional<Place> place() {
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

    /** The first questions to someone new, if they are being asked. */
    public Optional<FirstQuestions> firstStart() {
        return underWay.firstStart();
    }

    /** How a sitting opens, on this day. */
    public Opening opening() {
        if (opening == null) {
            opening = new Opening(sitting.study().agenda(), sitting.study().now());
            course.resume(opening.lesson());
        }
        return opening;
    }

    /** The lesson that the sitting opened with; empty if it has not opened, or with none. */
    String openedWith() {
        return opening == null ? "" : opening.lesson();
    }

    /** What begins has the line; the rest waits. */
    private void begin(Activity next) {
        question.clear();
        underWay.begin(next);
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

    void beginFirstStart(FirstQuestions first) {
        begin(first);
    }

    /** Asks nothing more of someone new, for good. */
    void endFirstStart() {
        if (firstStart().isPresent()) {
            question.clear();
            underWay.leave();
        }
        sitting.settings().keep(Opening.WELCOMED, "yes");
    }

    /** Whoever knows what to do is asked no more. */
    public void giveWay() {
        if (firstStart().isPresent()) {
            endFirstStart();
        }
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

    /** Begins a run of questions, one turn at least, in place of one that was being taken; a lesson waits. */
    public Answer practise(List<Turn> turns) {
        begin(QuestionRun.of(turns, level()));
        return next().advance();
    }

    /** The same with what is due; what is missed comes back once at the end, and after so many minutes it is over. */
    public Answer review(List<Turn> turns, int minutes) {
        opening().reviewed();
        long until = sitting.study().now() + Duration.ofMinutes(minutes).toMillis();
        begin(QuestionRun.review(turns, until, level()));
        Phrase head = Phrase.counted(
                turns.size(),
                "One thing to bring back, weakest first. skip ends it.",
                "{0} things to bring back, weakest first. skip ends it.",
                turns.size());
        return Answers.of(Statement.of(head), next().advance());
    }

    /** Begins the day's set, or goes on with the one that was cut off; a lesson waits. */
    public Answer practiseDaily(long seed) {
        opening().reviewed();
        QuestionRun run = day.begin(seed);
        Phrase head = day.head(run);
        begin(run);
        return sitting.study().withNotices(Answers.of(Statement.of(head), next().advance()));
    }

    DayTeaching day() {
        return day;
    }

    /** What becomes of questions for the ear where nothing sounds. */
    public Silence silence() {
        return silence;
    }

    Level level() {
        return new Level(sitting.study().knowledge());
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
        JudgedAnswer judged = JudgedAnswer.of(typed, question.question(), sitting.naming());
        return judged.saying(question.furtherHelp(judged.text().english(), judged.verdict()));
    }

    /** Takes an answer that was judged: keeps it, says the verdict, and after a right one goes on by itself. */
    public Answer take(JudgedAnswer judged) {
        Question taken = question.question();
        question.take(judged.text().english(), judged.verdict())
                .filter(attempt -> !silence.spares(taken))
                .ifPresent(sitting.study()::keep);
        return sitting.study().withNotices(said(judged));
    }

    /** Judges an answer and takes it. */
    public Answer answer(String typed) {
        return take(judge(typed));
    }

    private Answer said(JudgedAnswer judged) {
        Answer plain = new VerdictAnswer(judged.question(), judged.verdict(), List.of());
        if (firstStart().isPresent() && judged.isRead()) {
            return Answers.of(plain, FirstStart.follow(firstStart().get().judged(judged.verdict()), sitting));
        }
        if (!judged.verdict().grade().isRight()) {
            return judged.question().isByEar() && judged.isRead()
                    ? wrongByEar(judged)
                    : new VerdictAnswer(judged.question(), judged.verdict(), List.of(tryAgain()));
        }
        underWay.note(question.wasRightAtOnce());
        return underWay.isNamedQuestionAlone() ? plain : Answers.of(plain, next().advance());
    }

    /** What can be done after a wrong answer, or one that could not be read. */
    private Phrase tryAgain() {
        return question.isTried()
                ? Phrase.sentence("Try again, or: hint, why, tell.")
                : Phrase.sentence("Try again, or: hint, tell.");
    }

    /** By ear the first wrong answer is followed by another hearing, the second by the answer, beside one's own. */
    private Answer wrongByEar(JudgedAnswer judged) {
        if (question.tries() == 1) {
            Phrase played = heard(judged.question().heard());
            return new VerdictAnswer(judged.question(), judged.listeningAgain().verdict(), lines(played, tryAgain()));
        }
        Phrase both = silence.writesFiles()
                ? heard(judged.question().heardBeside(judged.text().english()))
                : Hearing.beside(
                        judged.question(),
                        judged.text().english(),
                        sitting.stage().ear());
        underWay.note(false);
        question.toldByEar();
        return new VerdictAnswer(judged.question(), judged.verdict(), lines(both, mode().row()));
    }

    private Phrase heard(Optional<Excerpt> excerpt) {
        return silence.writesFiles()
                ? excerpt.map(silence::write).orElse(Phrase.NOTHING)
                : Hearing.again(excerpt, sitting.stage().ear());
    }

    private static List<Phrase> lines(Phrase heard, Phrase now) {
        return heard.isEmpty() ? List.of(now) : List.of(heard, now);
    }

    /** Goes on without questions of these skills: none of them comes in the run, and the one of a lesson is passed. */
    Answer withoutEar(Predicate<Skill> unwanted) {
        underWay.run().ifPresent(run -> run.leaveOut(unwanted));
        underWay.walk().ifPresent(LessonWalk::pass);
        return underWay.walk().isPresent() ? lesson.next(sitting) : next().advance();
    }

    /** The same as {@link #asked} in a run or a lesson, where what is for the ear may be left out. */
    Answer askedUnderWay() {
        return silence.meet(question.question(), asked());
    }

    /** Tells the answer to the open question, which counts as not known, and goes on. */
    public Answer tell() {
        Question told = question.question();
        question.clear();
        underWay.note(false);
        Answer way = Statement.of(told.derivation());
        if (underWay.isNamedQuestionAlone()) {
            return way;
        }
        return Answers.of(
                way,
                firstStart().isPresent()
                        ? FirstStart.follow(firstStart().get().pass(), sitting)
                        : afterBreak(next()::advance));
    }

    NextStep next() {
        return new NextStep(this, sitting, underWay);
    }

    /** What Enter does. */
    public Answer goOn() {
        return afterBreak(() -> moves().enter());
    }

    /** Where it goes on after half an hour, a rest is recommended first. */
    private Answer afterBreak(Supplier<Answer> next) {
        boolean tired = sitting.stage().breaks().isDue();
        Answer goesOn = next.get();
        return tired ? Answers.of(Statement.of(Breaks.CAUTION), goesOn) : goesOn;
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
