package monochord.shell.sitting;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.lesson.notebook.Screen;
import monochord.lesson.notebook.Start;
import monochord.page.naming.AsTyped;
import monochord.practice.Grade;
import monochord.practice.Question;
import monochord.practice.Skill;
import monochord.practice.Verdict;
import monochord.practice.drill.Level;
import monochord.practice.drill.Turn;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Answers;
import monochord.shell.answer.AskAnswer;
import monochord.shell.answer.Look;
import monochord.shell.answer.NotesCalled;
import monochord.shell.answer.Saying;
import monochord.shell.answer.VerdictAnswer;
import monochord.shell.journal.Journal;
import monochord.theory.Key;
import monochord.theory.NoteName;
import monochord.theory.NoteNaming;

/** One sitting at the line: where we are, what is open, and what comes next. */
public final class Sitting {
    private static final String NOTES = "notes";

    private final Stage stage;
    private final Settings settings;
    private final Outside outside;
    private final Study study;
    private final Journal journal;
    private Chance seeds;
    private Course course;
    private Desk desk;
    private final Cells cells = new Cells(this);
    private final Rest rest = new Rest();
    private Drill drill;
    private Opening opening;
    private Presentation presentation;
    private Key key = Key.major(NoteName.C);
    private Look look = Look.ofPipe();
    private int screenLines = Integer.MAX_VALUE;
    private NoteNaming naming = NoteNaming.ENGLISH;
    private boolean ended;

    /** One in which the clock stands still and whose answers are forgotten with it. */
    public Sitting(Ear ear, Chance seeds, Path folder, Course course) {
        this(ear, seeds, folder, course, () -> 0, Keeper.inMemory(), Settings.inMemory());
    }

    /**
     * @param seeds where chance comes from
     * @param folder where file names that are not absolute begin
     * @param clock milliseconds since 1970 in UTC
     */
    public Sitting(
            Ear ear, Chance seeds, Path folder, Course course, LongSupplier clock, Keeper keeper, Settings settings) {
        this.stage = new Stage(ear, settings);
        this.settings = settings;
        this.seeds = seeds;
        this.outside = new Outside(folder);
        this.course = course;
        this.desk = new Desk(clock);
        this.study = new Study(keeper, clock);
        this.journal = new Journal(this::start);
    }

    private Start start() {
        int rows = screenLines == Integer.MAX_VALUE ? 0 : screenLines;
        String lesson = opening == null ? "" : opening.lesson();
        return Start.of(Start.USUAL.key(), seeds.beginning(), new Screen(look.width(), rows), lesson);
    }

    /** What is noted of this sitting. */
    public Journal journal() {
        return journal;
    }

    /** What it may reach beyond itself. */
    public Outside outside() {
        return outside;
    }

    /** Goes on where another sitting stands: its key, its question, its lesson, its chance. */
    public void goOnFrom(Sitting other) {
        key = other.key;
        seeds = other.seeds;
        course = other.course;
        desk = other.desk;
        drill = other.drill;
        presentation = other.presentation;
        cells.take(other.cells.handOver());
        stage.rememberAs(other.stage);
    }

    public Key key() {
        return key;
    }

    /** Makes this the key in which everything is read that names no other. */
    public void settle(Key newKey) {
        key = newKey;
    }

    /** Tells how answers will look, and how many lines the learner sees at once. */
    public void faces(Look screen, int lines) {
        look = screen;
        screenLines = lines;
    }

    Look look() {
        return look;
    }

    /** How many lines the learner sees at once. */
    public int screenLines() {
        return screenLines;
    }

    /** Where music is shown and heard. */
    public Stage stage() {
        return stage;
    }

    /** By what names notes go, in what is typed and what is shown. */
    public NoteNaming naming() {
        return naming;
    }

    /** From now on a person sits here: notes go by the names the learner has settled on. A script's are English. */
    public void takeSeat() {
        naming = settings.get(NOTES).flatMap(NoteNaming::of).orElse(NoteNaming.ENGLISH);
    }

    /** Settles by what names notes go, for this sitting in any case; goes on with what asked for it. */
    public Answer call(NoteNaming names) {
        naming = names;
        boolean kept = settings.keep(NOTES, names.toString());
        Answer called = new NotesCalled(names, kept);
        return welcome().filter(Opening::asksForNames).isPresent() ? Answers.of(called, goOn()) : called;
    }

    /** Tells whoever looks on that the line waits, and what for. */
    public void waits() {
        Optional<Question> answered = Optional.ofNullable(cells.isOpen() ? null : desk.question());
        stage.waits(new Scene(key, naming, answered));
    }

    /** What the learner has settled for good. */
    public Settings settings() {
        return settings;
    }

    public long nextSeed() {
        return seeds.getAsLong();
    }

    /** Whether a person sits at a terminal and can be asked. */
    public boolean isAttended() {
        return screenLines != Integer.MAX_VALUE && outside.seal().isEmpty();
    }

    /** Where Java is run. */
    public Cells cells() {
        return cells;
    }

    public Course course() {
        return course;
    }

    public Desk desk() {
        return desk;
    }

    public Study study() {
        return study;
    }

    /** Puts a question that was asked for by name; a lesson or a run that is being taken waits. */
    public void ask(Skill skill, Question question) {
        setAside();
        desk.put(skill, question);
        study.ready();
    }

    /** A lesson's question comes back when the lesson goes on; one of a run is gone. */
    private void setAside() {
        stage.leaveContest();
        if (desk.isOpen() && !desk.isByName() && drill == null) {
            course.keep(desk.question());
        }
        desk.clear();
    }

    /** @param lesson the slug of the lesson that asks, empty if none does */
    void put(Question question, String lesson) {
        stage.leaveContest();
        desk.put(question, lesson);
        study.ready();
    }

    /** The open question in words, and to the ear if it is one for the ear. */
    public AskAnswer asked() {
        return Hearing.put(desk.question(), stage.ear());
    }

    /** Begins a run of questions, one turn at least, in place of one that was being taken; a lesson waits. */
    public Answer drill(List<Turn> turns) {
        return begin(Drill.of(turns, level()));
    }

    /** The same with what is due; what is missed comes back once at the end, and after so many minutes it is over. */
    public Answer review(List<Turn> turns, int minutes) {
        opening().reviewed();
        long until = study.now() + Duration.ofMinutes(minutes).toMillis();
        return begin(Drill.review(turns, until, level()));
    }

    private Level level() {
        return new Level(study.knowledge());
    }

    private Answer begin(Drill run) {
        setAside();
        presentation = null;
        drill = run;
        return nextInDrill();
    }

    private Answer nextInDrill() {
        if (drill.isOver(study.now())) {
            return endDrill();
        }
        put(drill.next(seeds), "");
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
        AsTyped text = NamedAnswer.answer(typed, question, naming);
        Verdict verdict = NamedAnswer.quoting(text, desk.answer(text.english()));
        if (verdict.grade() != Grade.UNREADABLE) {
            study.keep(desk.lastAttempt());
        }
        return study.withNotices(answer(question, verdict, text.english()));
    }

    private Answer answer(Question question, Verdict verdict, String text) {
        if (welcome().isPresent() && verdict.grade() != Grade.UNREADABLE) {
            return Answers.of(new VerdictAnswer(question, verdict, ""), opening.judged(verdict, this));
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
                ? Hearing.beside(question, text, stage.ear()) + "\n"
                : "";
        return heard + "Try again, or: hint, why, tell. Enter leaves it and goes on.";
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
        Optional<Answer> reminder = rest.due(study.now());
        Answer next = presentation == null ? goOnAlone() : present();
        return reminder.isEmpty() ? next : Answers.of(reminder.get(), next);
    }

    private Answer present() {
        Answer next = presentation.goOn(this);
        presentation = presentation.isOver() ? null : presentation;
        return next;
    }

    private Answer goOnAlone() {
        if (welcome().isPresent()) {
            leaveQuestion();
            return opening().begin(this);
        }
        if (desk.isOpen() && !desk.isTried()) {
            return asked();
        }
        leaveQuestion();
        if (drill != null) {
            return nextInDrill();
        }
        if (course.isOpen()) {
            return course.goOn(this);
        }
        return stage.contestOnEnter().isPresent()
                ? stage.contestOnEnter().get().heard(this)
                : desk.isByName() ? askAgain(desk.lastSkill()) : opening().begin(this);
    }

    /** Whether nothing waits that an empty line would go on with. */
    boolean isIdle() {
        return presentation == null && !desk.isOpen() && drill == null && !course.isOpen();
    }

    private Answer askAgain(Skill skill) {
        Question last = desk.lastQuestion();
        ask(skill, last.isByEar() ? level().another(skill, seeds, last) : new Turn(skill, key).question(seeds, last));
        return asked();
    }

    /** How a sitting opens, on this day. */
    public Opening opening() {
        if (opening == null) {
            opening = new Opening(study.agenda(), study.now());
            course.resume(opening.lesson());
        }
        return opening;
    }

    /** The questions to someone new, as long as they are being asked. */
    public Optional<Opening> welcome() {
        return Optional.ofNullable(opening).filter(Opening::isAsking);
    }

    public void end() {
        stage.ear().stop();
        ended = true;
    }

    /** Leaves word for the next sitting; more than once does no harm. */
    public void leave() {
        study.leave(course);
        journal.leave(ended);
    }

    public boolean hasEnded() {
        return ended;
    }

    /** Said where there is nothing to go on with. */
    static Answer idle() {
        return Saying.of("Type a chord, a progression, a verb, or help.");
    }
}
