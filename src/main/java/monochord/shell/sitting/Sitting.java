package monochord.shell.sitting;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.LongSupplier;
import monochord.course.Course;
import monochord.course.FirstQuestions;
import monochord.course.OpenQuestion;
import monochord.course.Position;
import monochord.notebook.Screen;
import monochord.notebook.Start;
import monochord.practice.Question;
import monochord.shell.journal.Journal;
import monochord.shell.line.LineMode;
import monochord.shell.line.LineState;
import monochord.shell.line.LongAnswerPages;
import monochord.shell.playback.Breaks;
import monochord.shell.playback.Ear;
import monochord.shell.storage.Keeper;
import monochord.shell.storage.LearnerRecord;
import monochord.shell.storage.Settings;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.NoteNaming;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Look;
import monochord.view.NotesCalled;
import monochord.view.Statement;

/** One sitting at the line: who sits there, in which key, and what is within reach. */
public final class Sitting {

    private final PlaybackState stage;
    private final Settings settings;
    private final Outside outside;
    private final LearnerRecord study;
    private final Journal journal;
    private SeedSource seeds;
    private final Teaching teaching;
    private final Cells cells = new Cells(this);
    private final LinePlace linePlace = new LinePlace(this);
    private final OpenSong song = new OpenSong();
    private final LongAnswerPages longAnswer = new LongAnswerPages();
    private Key key = Key.major(NoteName.C);
    private Look look = Look.ofPipe();
    private int screenLines = Integer.MAX_VALUE;
    private NoteNaming naming = NoteNaming.ENGLISH;
    private boolean seated;
    private boolean ended;

    /**
     * What outlasts a sitting, and the time of day.
     *
     * @param clock milliseconds since 1970 in UTC
     */
    public record Storage(LongSupplier clock, Keeper keeper, Settings settings) {}

    /** One in which the clock stands still and whose answers are forgotten with it. */
    public Sitting(Ear ear, SeedSource seeds, Path folder, Course course) {
        this(ear, seeds, folder, course, new Storage(() -> 0, Keeper.inMemory(), Settings.inMemory()));
    }

    /**
     * @param seeds where chance comes from
     * @param folder where file names that are not absolute begin
     */
    public Sitting(Ear ear, SeedSource seeds, Path folder, Course course, Storage memory) {
        LongSupplier clock = memory.clock();
        this.stage = new PlaybackState(ear, memory.settings(), new Breaks(clock));
        this.settings = memory.settings();
        this.seeds = seeds;
        this.outside = new Outside(folder);
        this.teaching = new Teaching(this, course, clock);
        this.study = new LearnerRecord(memory.keeper(), clock);
        this.journal = new Journal(this::start, () -> Look.ofPipe().naming(naming));
    }

    private Start start() {
        int rows = screenLines == Integer.MAX_VALUE ? 0 : screenLines;
        return Start.of(
                Start.USUAL.key(), seeds.beginning(), new Screen(look.width(), rows), teaching.openedWith(), naming);
    }

    /** What is noted of this sitting. */
    public Journal journal() {
        return journal;
    }

    /** What it may reach beyond itself. */
    public Outside outside() {
        return outside;
    }

    /** Goes on where another sitting stands: its key, its question, its lesson, its chance, its names for notes. */
    public void goOnFrom(Sitting other) {
        key = other.key;
        naming = other.naming;
        seeds = other.seeds;
        teaching.goOnFrom(other.teaching);
        linePlace.goOnFrom(other.linePlace);
        cells.take(other.cells.handOver());
        stage.rememberAs(other.stage);
        song.goOnFrom(other.song, outside);
    }

    public Key key() {
        return key;
    }

    /** Makes this the key in which everything is read that names no other. */
    public void settle(Key newKey) {
        key = newKey;
    }

    /** @param lines of the window, {@link Integer#MAX_VALUE} where nothing scrolls away */
    public void setDisplay(Look screen, int lines) {
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
    public PlaybackState stage() {
        return stage;
    }

    /** By what names notes go, in what is typed and what is shown. */
    public NoteNaming naming() {
        return naming;
    }

    /** From now on a person converses here, not a script: notes go by the names kept in the settings. */
    public void startInteractive() {
        seated = true;
        naming = settings.get(Settings.NOTES).flatMap(NoteNaming::of).orElse(NoteNaming.ENGLISH);
    }

    /** The same, where notes go by these names. */
    public void startInteractive(NoteNaming names) {
        seated = true;
        naming = names;
    }

    /** From now on notes go by these names, whoever types; nothing is kept. */
    public void goBy(NoteNaming names) {
        naming = names;
    }

    /** Whether a person converses here, and no script. */
    public boolean isSeated() {
        return seated;
    }

    /** Settles by what names notes go, for this sitting in any case; goes on with what asked for it. */
    public Answer call(NoteNaming names) {
        naming = names;
        boolean kept = settings.keep(Settings.NOTES, names.toString());
        Answer called = new NotesCalled(names, kept);
        boolean asked = teaching.firstStart()
                .questions()
                .filter(FirstQuestions::asksForNames)
                .isPresent();
        return asked ? Answers.of(called, teaching.goOn()) : called;
    }

    /** Tells whoever looks on that the line waits, and what for. */
    public void waits() {
        Optional<Question> answered =
                Optional.ofNullable(cells.isOpen() ? null : question().question());
        stage.waits(new LineState(key, naming, answered));
    }

    /** What the learner has settled for good. */
    public Settings settings() {
        return settings;
    }

    /** Where chance comes from. */
    SeedSource seeds() {
        return seeds;
    }

    public long nextSeed() {
        return seeds.getAsLong();
    }

    /** Whether a person sits at a terminal and can be asked. */
    public boolean isAttended() {
        return screenLines != Integer.MAX_VALUE && outside.seal().isEmpty();
    }

    /** What the line is there for: the innermost of what is open. */
    public LineMode mode() {
        LineMode below = song.newSong().isPresent() ? LineMode.NEW_SONG : teaching.mode();
        LineMode above = longAnswer.isOpen() ? LineMode.LONG_ANSWER : outside.asksConsent() ? LineMode.CONSENT : below;
        return cells.isOpen() ? LineMode.OPEN_CELL : above;
    }

    /** How far that has come, where it can be counted. */
    public Optional<Position> place() {
        return switch (mode()) {
            case LONG_ANSWER -> longAnswer.place();
            case OPEN_CELL, CONSENT, NEW_SONG -> Optional.empty();
            default -> teaching.place();
        };
    }

    /** Says where the line stands. */
    public LinePlace linePlace() {
        return linePlace;
    }

    /** The long answer that is being read. */
    public LongAnswerPages longAnswer() {
        return longAnswer;
    }

    /** The song that is open. */
    public OpenSong song() {
        return song;
    }

    /** Where Java is run. */
    public Cells cells() {
        return cells;
    }

    /** What is being taught in it. */
    public Teaching teaching() {
        return teaching;
    }

    public Course course() {
        return teaching.course();
    }

    /** The question that is open, or was last. */
    public OpenQuestion question() {
        return teaching.question();
    }

    public LearnerRecord study() {
        return study;
    }

    public void end() {
        stage.ear().stop();
        ended = true;
    }

    /** Leaves word for the next sitting; more than once does no harm. */
    public void leave() {
        study.leave(course(), teaching.silence()::leavesOut);
        journal.leave(ended);
    }

    public boolean hasEnded() {
        return ended;
    }

    /** Said where there is nothing to go on with. */
    static Answer idle() {
        return Statement.of(Phrase.sentence("Type a chord, a progression, a verb, or help."));
    }
}
