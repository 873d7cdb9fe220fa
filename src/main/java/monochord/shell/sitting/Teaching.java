package monochord.shell.sitting;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import monochord.course.Activity;
import monochord.course.Course;
import monochord.course.LessonWalk;
import monochord.course.NamedAnswer;
import monochord.course.NamedQuestion;
import monochord.course.OpenQuestion;
import monochord.course.Place;
import monochord.course.Placement;
import monochord.course.QuestionRun;
import monochord.course.RoomLesson;
import monochord.lesson.Reading;
import monochord.lesson.read.LibraryEntry;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.drill.Level;
import monochord.practice.drill.Turn;
import monochord.text.Phrase;
import monochord.text.naming.AsTyped;
import monochord.theory.Key;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;
import monochord.view.course.AskAnswer;
import monochord.view.course.CheckAnswer;
import monochord.view.course.DrillEnd;
import monochord.view.course.VerdictAnswer;

/**
 * What is being taught. What is under way stands in one pile: the line goes on with the uppermost, and what lies below waits
 * for it. {@link LineMode} says what Enter and the words beside it do with each.
 */
public final class Teaching {
    private final Sitting sitting;
    private Deque<Activity> underWay = new ArrayDeque<>();
    private Course course;
    private OpenQuestion question;
    private LessonTeaching lesson;
    private ClassTeaching room;
    private Opening opening;

    Teaching(Sitting sitting, Course course, LongSupplier clock) {
        this.sitting = sitting;
        this.course = course;
        this.question = new OpenQuestion(clock);
    }

    /** Goes on where another stands: its question, its lesson. */
    void goOnFrom(Teaching other) {
        course = other.course;
        question = other.question;
        underWay = other.underWay;
        lesson = other.lesson;
        room = other.room;
    }

    public Course course() {
        return course;
    }

    /** The question that is open, or was last. */
    public OpenQuestion question() {
        return question;
    }

    /** What the line is there for. */
    LineMode mode() {
        Activity now = underWay.peek();
        if (now instanceof Placement first) {
            return first.asksForNames() ? LineMode.NAMES : LineMode.FIRST_QUESTION;
        }
        if (now instanceof NamedQuestion) {
            return question.isOpen() ? LineMode.QUESTION : LineMode.ANSWERED;
        }
        if (now instanceof QuestionRun run) {
            return run.isReview() ? LineMode.REVIEW : LineMode.RUN;
        }
        if (now instanceof RoomLesson shown) {
            return shown.isAsking() ? LineMode.CLASS_QUESTION : LineMode.CLASS;
        }
        return now == null ? LineMode.REST : lessonMode();
    }

    private LineMode lessonMode() {
        return lesson.isJavaWaiting()
                ? LineMode.LESSON_JAVA
                : question.isOpen() ? LineMode.LESSON_QUESTION : LineMode.LESSON_PAGE;
    }

    /** How far what is under way has come. */
    Optional<Place> place() {
        Activity now = underWay.peek();
        if (now instanceof LessonWalk walk) {
            return Optional.of(question.isOpen() ? walk.place() : walk.page());
        }
        return now instanceof QuestionRun run
                ? Optional.of(run.place())
                : now instanceof RoomLesson shown
                        ? Optional.of(shown.place())
                        : now instanceof Placement first ? Optional.of(first.place()) : Optional.empty();
    }

    /** What Enter does in that mode, and what hears a page again. */
    Phrase row(LineMode mode) {
        boolean plays =
                mode == LineMode.LESSON_PAGE && underWay.peek() instanceof LessonWalk walk && walk.endsWithMusic();
        if (mode == LineMode.LESSON_JAVA) {
            return mode.fullRow();
        }
        return plays ? Phrase.sentence("Enter {0}; play hears it again.", mode.enter()) : mode.row();
    }

    /** The run of questions that is being taken, if the line goes on with one. */
    public boolean isInRun() {
        return underWay.peek() instanceof QuestionRun;
    }

    /** Whether a lesson is being taken, though perhaps something else comes first. */
    public boolean isInLesson() {
        return underWay.stream().anyMatch(LessonWalk.class::isInstance);
    }

    /** The lesson before a class, if the line goes on with one. */
    public Optional<ClassTeaching> room() {
        return underWay.peek() instanceof RoomLesson ? Optional.of(room) : Optional.empty();
    }

    /** The question that the class looks at. */
    public Optional<Question> roomQuestion() {
        return underWay.peek() instanceof RoomLesson shown ? shown.question() : Optional.empty();
    }

    /** The first questions to someone new, if they are being asked. */
    public Optional<Placement> firstStart() {
        return underWay.peek() instanceof Placement first ? Optional.of(first) : Optional.empty();
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

    /** What begins takes the place of what stands as near to the line; the rest waits, with its question. */
    private void begin(Activity next) {
        question.clear();
        while (!underWay.isEmpty() && underWay.peek().nearness() >= next.nearness()) {
            underWay.pop();
        }
        underWay.push(next);
    }

    void beginFirstStart(Placement first) {
        begin(first);
    }

    /** Asks nothing more of someone new, for good. */
    void endFirstStart() {
        if (firstStart().isPresent()) {
            question.clear();
            underWay.pop();
        }
        sitting.settings().keep(Opening.WELCOMED, "yes");
    }

    /** Whoever knows what to do is asked no more. */
    public void giveWay() {
        if (firstStart().isPresent()) {
            endFirstStart();
        }
    }

    /** Puts a question that was asked for by name; what is under way waits. */
    public void ask(Skill skill, Question named) {
        begin(new NamedQuestion());
        question.put(skill, named);
        sitting.study().ready();
    }

    /** The open question in words, and to the ear if it is one for the ear. */
    public AskAnswer asked() {
        return Hearing.put(question.question(), sitting.stage().ear());
    }

    /** Begins a run of questions, one turn at least, in place of one that was being taken; a lesson waits. */
    public Answer practise(List<Turn> turns) {
        begin(QuestionRun.of(turns, level()));
        return advance();
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
        return Answers.of(Statement.of(head), advance());
    }

    Level level() {
        return new Level(sitting.study().knowledge());
    }

    /** Begins a lesson of the library, or says what is wrong with it. */
    public Answer begin(LibraryEntry entry, Optional<Key> key) {
        Reading reading = course.library().read(entry);
        if (reading.lesson().isEmpty() || !reading.isSound()) {
            return faults(entry, reading);
        }
        course.begin(entry);
        key.ifPresent(sitting::settle);
        lesson = LessonTeaching.of(entry, reading.lesson().get(), key, sitting);
        if (!Course.majorKey(sitting.key()).equals(lesson.walk().key())) {
            sitting.settle(lesson.walk().key()); // it was left in this key
        }
        begin(lesson.walk());
        return lesson.begin(sitting);
    }

    private static Answer faults(LibraryEntry entry, Reading reading) {
        return new CheckAnswer(List.of(new CheckAnswer.Checked(entry.file().toString(), reading.faults(), true)));
    }

    /** Begins to take a lesson with a class, or says what is wrong with it; the learner's own lesson waits. */
    public Answer present(LibraryEntry entry, Key key) {
        Reading reading = course.library().read(entry);
        if (reading.lesson().isEmpty() || !reading.isSound()) {
            return faults(entry, reading);
        }
        sitting.settle(key);
        RoomLesson shown = new RoomLesson(reading.lesson().get(), Course.majorKey(key), sitting.nextSeed());
        begin(shown);
        room = new ClassTeaching(shown);
        return room.begin(sitting);
    }

    void lessonIsOver(LessonTeaching over) {
        underWay.remove(over.walk());
    }

    /** The verdict on an answer to the open question, which nothing hangs on yet. */
    public Judged judge(String typed) {
        Question open = question.question();
        AsTyped text = NamedAnswer.answer(typed, open, sitting.naming());
        return new Judged(open, text, question.furtherHelp(text.english(), NamedAnswer.judge(text, open)));
    }

    /** Takes an answer that was judged: keeps it, says the verdict, and after a right one goes on by itself. */
    public Answer take(Judged judged) {
        question.take(judged.text().english(), judged.verdict()).ifPresent(sitting.study()::keep);
        return sitting.study().withNotices(said(judged));
    }

    /** Judges an answer and takes it. */
    public Answer answer(String typed) {
        return take(judge(typed));
    }

    private Answer said(Judged judged) {
        Answer plain = new VerdictAnswer(judged.question(), judged.verdict(), List.of());
        if (firstStart().isPresent() && judged.isRead()) {
            return Answers.of(plain, FirstStart.follow(firstStart().get().judged(judged.verdict()), sitting));
        }
        if (!judged.verdict().grade().isRight()) {
            return new VerdictAnswer(judged.question(), judged.verdict(), tryAgain(judged));
        }
        note(question.wasRightAtOnce());
        return isAloneWithQuestion() ? plain : Answers.of(plain, advance());
    }

    private boolean isAloneWithQuestion() {
        return underWay.peek() instanceof NamedQuestion && underWay.size() == 1;
    }

    /** What can be done after a wrong answer, or one that could not be read. */
    private List<Phrase> tryAgain(Judged judged) {
        Phrase heard = judged.question().isByEar() && judged.isRead()
                ? Hearing.beside(
                        judged.question(),
                        judged.text().english(),
                        sitting.stage().ear())
                : Phrase.NOTHING;
        Phrase now = question.isTried()
                ? Phrase.sentence("Try again, or: hint, why, tell.")
                : Phrase.sentence("Try again, or: hint, tell.");
        return heard.isEmpty() ? List.of(now) : List.of(heard, now);
    }

    /** Counts what came of a question, if it was one of a run or a lesson. */
    private void note(boolean rightAtOnce) {
        if (underWay.peek() instanceof QuestionRun run) {
            run.note(rightAtOnce);
        } else if (underWay.peek() instanceof LessonWalk walk) {
            walk.note(rightAtOnce);
        }
    }

    /** Tells the answer to the open question, which counts as not known, and goes on. */
    public Answer tell() {
        Question told = question.question();
        question.clear();
        note(false);
        Answer way = Statement.of(told.derivation());
        if (isAloneWithQuestion()) {
            return way;
        }
        return Answers.of(
                way,
                firstStart().isPresent()
                        ? FirstStart.follow(firstStart().get().pass(), sitting)
                        : afterBreak(this::advance));
    }

    /** What comes of itself once a question is done with. */
    Answer advance() {
        if (underWay.peek() instanceof NamedQuestion) {
            return leaveUppermost();
        }
        if (underWay.peek() instanceof QuestionRun run) {
            if (run.isOver(sitting.study().now())) {
                return endRun();
            }
            question.put(run.next(sitting.seeds()), "");
            sitting.study().ready();
            return asked();
        }
        return lesson.nextBelowVerdict(sitting);
    }

    /** The uppermost is done with; what waited below goes on at once if it was in the middle of a question. */
    Answer leaveUppermost() {
        question.clear();
        underWay.pop();
        boolean goesOn =
                underWay.peek() instanceof QuestionRun || underWay.peek() instanceof LessonWalk walk && walk.isAsking();
        return goesOn ? advance() : new Answers(List.of());
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

    /** Ends the run that is being taken, and says how it went; a question nobody has tried does not count. */
    public Answer endRun() {
        QuestionRun run = (QuestionRun) underWay.pop();
        if (question.isOpen() && (question.isTried() || question.hintsGiven() > 0)) {
            run.note(false);
        }
        question.clear();
        QuestionRun.Result result = run.result();
        return new DrillEnd(result.asked(), result.atOnce(), result.second(), result.missed());
    }
}
