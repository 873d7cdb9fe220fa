package monochord.shell.line;

import monochord.course.OpenActivities;
import monochord.course.QuestionRun;
import monochord.text.Phrase;

/**
 * What the line is there for at the moment, and what Enter and four words do then. This table is the only place that says
 * so: the prompt prints its row, {@code help enter} prints all of it.
 *
 * <p>In each mode Enter has one meaning, and so many Enters lead from each to {@link #REST} or to something new.
 */
public enum LineMode {
    REST(
            Phrase.of("nothing open"),
            Phrase.of("begins the next"),
            RepeatedCells.NOTHING,
            RepeatedCells.NOTHING,
            Phrase.of("what to type")),
    NAMES(
            Phrase.of("names of notes"),
            Phrase.of("keeps A B C"),
            Phrase.of("ends them"),
            RepeatedCells.NOTHING,
            Phrase.of("says more")),
    FIRST_QUESTION(
            Phrase.of("a first question"),
            Phrase.of("passes it"),
            Phrase.of("ends them"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    QUESTION(
            Phrase.of("a question"),
            Phrase.of("leaves it"),
            Phrase.of("leaves it"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    ANSWERED(
            Phrase.of("after its answer"),
            Phrase.of("asks another"),
            Phrase.of("is done with it"),
            RepeatedCells.NOTHING,
            RepeatedCells.NOTHING),
    RUN(
            Phrase.of("a run of questions"),
            Phrase.of("passes it"),
            Phrase.of("ends the run"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    REVIEW(
            Phrase.of("a review"),
            Phrase.of("passes it"),
            Phrase.of("ends the review"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    SET(
            Phrase.of("the day's set"),
            Phrase.of("passes it"),
            Phrase.of("leaves the rest for later"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    AT_INSTRUMENT(
            Phrase.of("at the instrument"),
            Phrase.of("goes on"),
            Phrase.of("goes on"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    ROUND_PLAYED(
            Phrase.of("after a round"),
            Phrase.of("says it was clean"),
            Phrase.of("ends it"),
            Phrase.of("plays it again"),
            RepeatedCells.HELPS),
    REHEARSAL(
            Phrase.of("a rehearsal, stopped"),
            Phrase.of("plays on"),
            Phrase.of("ends it"),
            RepeatedCells.NOTHING,
            RepeatedCells.HELPS),
    TOLD(
            Phrase.of("told by ear"),
            Phrase.of("goes on"),
            Phrase.of("ends it"),
            RepeatedCells.NOTHING,
            RepeatedCells.NOTHING),
    NO_SOUND(
            Phrase.of("nothing sounds"),
            Phrase.of("leaves ear out"),
            Phrase.of("leaves ear out"),
            RepeatedCells.NOTHING,
            RepeatedCells.NOTHING),
    LESSON_PAGE(
            Phrase.of("page of a lesson"),
            Phrase.of("goes on"),
            Phrase.of("leaves it here"),
            Phrase.of("a page back"),
            Phrase.of("what to do")),
    LESSON_QUESTION(
            Phrase.of("question on a page"),
            Phrase.of("passes it"),
            Phrase.of("passes them all"),
            Phrase.of("page again"),
            RepeatedCells.HELPS),
    LESSON_JAVA(
            Phrase.of("Java in a lesson"),
            Phrase.of("runs it"),
            Phrase.of("passes it by"),
            Phrase.of("a page back"),
            RepeatedCells.NOTHING),
    CLASS(
            Phrase.of("before a class"),
            Phrase.of("goes on"),
            Phrase.of("ends it"),
            Phrase.of("a step back"),
            RepeatedCells.NOTHING),
    CLASS_QUESTION(
            Phrase.of("asking a class"),
            Phrase.of("tells"),
            Phrase.of("ends it"),
            Phrase.of("a step back"),
            RepeatedCells.HELPS),
    NEW_SONG(
            Phrase.of("a new song"),
            Phrase.of("goes on"),
            Phrase.of("leaves off"),
            Phrase.of("a step back"),
            RepeatedCells.HELPS),
    CONSENT(
            Phrase.of("yes is wanted"),
            Phrase.of("goes on without"),
            Phrase.of("goes on without"),
            RepeatedCells.NOTHING,
            RepeatedCells.NOTHING),
    OPEN_CELL(
            Phrase.of("unfinished Java"),
            Phrase.of("twice leaves it"),
            Phrase.of("leaves it"),
            Phrase.of("is Java"),
            Phrase.of("is Java")),
    LONG_ANSWER(
            Phrase.of("a long answer"),
            Phrase.of("shows more"),
            Phrase.of("leaves the rest"),
            Phrase.of("a screen back"),
            Phrase.of("leaves the rest"));

    /** What {@code quit} does in every mode. */
    public static final Phrase QUIT = Phrase.of("leaves, and keeps your place");

    private final Phrase where;
    private final Phrase enter;
    private final Phrase skip;
    private final Phrase back;
    private final Phrase hint;

    LineMode(Phrase where, Phrase enter, Phrase skip, Phrase back, Phrase hint) {
        this.where = where;
        this.enter = enter;
        this.skip = skip;
        this.back = back;
        this.hint = hint;
    }

    /** Cells that come more than once. */
    private static final class RepeatedCells {
        static final Phrase NOTHING = Phrase.of("–");
        static final Phrase HELPS = Phrase.of("helps");
    }

    /** What to do, for whoever asks in so many words. */
    private static final class Advice {
        static final Phrase REST = Phrase.sentence(
                        "Type music, such as {0}, {1} or {2}, and see what it is; play {1} sounds it.",
                        Phrase.toType("Am7"), Phrase.toType("F C G"), Phrase.toType("D major"))
                .then(Phrase.of("lessons lists what can be learnt, help all the rest."));
        static final Phrase NAMES = Phrase.sentence(
                        "If you call the white keys {0}, press Enter.", Phrase.typed("A B C D E F G"))
                .then(Phrase.sentence(
                        "If one of them is {0} to you, type german; if they are {1}, type latin.",
                        Phrase.typed("H"), Phrase.typed("La Si Do")));
        static final Phrase LESSON = Phrase.sentence("A lesson is open: Enter goes on with it.")
                .then(Phrase.of("play hears the last example again, help lists what else there is."));
        static final Phrase CLASS = Phrase.sentence("Enter goes on, back goes back, skip ends it.");
    }

    /**
     * What the line is there for.
     *
     * @param asking whether a question is open
     * @param java whether the lesson that is being taken waits to run Java
     */
    public static LineMode of(OpenActivities underWay, boolean asking, boolean java) {
        if (underWay.firstStart().isPresent()) {
            return underWay.firstStart().get().asksForNames() ? NAMES : FIRST_QUESTION;
        } else if (underWay.isNamedQuestion()) {
            return asking ? QUESTION : ANSWERED;
        } else if (underWay.run().isPresent()) {
            return asking ? ofRun(underWay.run().get()) : TOLD;
        } else if (underWay.rehearsal().isPresent()) {
            return underWay.rehearsal().get().asks() ? ROUND_PLAYED : REHEARSAL;
        } else if (underWay.room().isPresent()) {
            return underWay.room().get().isAsking() ? CLASS_QUESTION : CLASS;
        } else if (underWay.isNothing()) {
            return REST;
        }
        return java ? LESSON_JAVA : asking ? LESSON_QUESTION : LESSON_PAGE;
    }

    /** In two or three words. */
    private static LineMode ofRun(QuestionRun run) {
        return switch (run.kind()) {
            case RUN -> RUN;
            case REVIEW -> REVIEW;
            case SET -> run.isAtInstrument() ? AT_INSTRUMENT : SET;
        };
    }

    public Phrase where() {
        return where;
    }

    public Phrase enter() {
        return enter;
    }

    public Phrase skip() {
        return skip;
    }

    public Phrase back() {
        return back;
    }

    public Phrase hint() {
        return hint;
    }

    /** What to do here, in whole sentences; empty where an open question says it. */
    public Phrase advice() {
        return switch (this) {
            case REST -> Advice.REST;
            case NAMES -> Advice.NAMES;
            case LESSON_PAGE -> Advice.LESSON;
            case CLASS, CLASS_QUESTION -> Advice.CLASS;
            default -> Phrase.NOTHING;
        };
    }

    /** Whether each answer that leaves the line in this mode says so, even one that a script gets. */
    public boolean isAlwaysSaid() {
        return this == LESSON_PAGE || this == LESSON_JAVA || this == LONG_ANSWER;
    }

    /** What Enter does, as a sentence. */
    public Phrase row() {
        return Phrase.sentence("Enter {0}.", enter);
    }

    /** What Enter does, and what leaves and what helps. */
    public Phrase fullRow() {
        boolean helps = hint.equals(RepeatedCells.HELPS);
        if (!isSomething(skip) || skip.equals(enter)) {
            return helps ? Phrase.sentence("Enter {0}, hint helps.", enter) : row();
        }
        return helps
                ? Phrase.sentence("Enter {0}, skip {1}, hint helps.", enter, skip)
                : Phrase.sentence("Enter {0}, skip {1}.", enter, skip);
    }

    /** Whether a word does something here. */
    public static boolean isSomething(Phrase cell) {
        return !cell.equals(RepeatedCells.NOTHING);
    }
}
