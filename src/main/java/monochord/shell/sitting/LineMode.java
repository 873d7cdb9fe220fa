package monochord.shell.sitting;

/**
 * What the line is there for at the moment, and what Enter and four words do then. This table is the only place that says
 * so: the prompt prints its row, {@code help enter} prints all of it.
 *
 * <p>In each mode Enter has one meaning, and so many Enters lead from each to {@link #REST} or to something new.
 */
public enum LineMode {
    REST("nothing open", "begins the next", Cell.NOTHING, Cell.NOTHING, "what to type", Advice.REST),
    NAMES("names of notes", "keeps A B C", "ends the three", Cell.NOTHING, "says more", Advice.NAMES),
    FIRST_QUESTION("a first question", "passes it", "ends the three", Cell.NOTHING, Cell.HELPS, ""),
    QUESTION("a question", "leaves it", "leaves it", Cell.NOTHING, Cell.HELPS, ""),
    ANSWERED("after its answer", "asks another", "is done with it", Cell.NOTHING, Cell.NOTHING, ""),
    RUN("a run of questions", "passes it", "ends the run", Cell.NOTHING, Cell.HELPS, ""),
    REVIEW("a review", "passes it", "ends the review", Cell.NOTHING, Cell.HELPS, ""),
    LESSON_PAGE("page of a lesson", "goes on", "leaves it here", "a page back", "what to do", Advice.LESSON),
    LESSON_QUESTION("question on a page", "passes it", "passes them all", "the page again", Cell.HELPS, ""),
    LESSON_JAVA("Java in a lesson", "runs it", "passes it by", "a page back", Cell.NOTHING, ""),
    CLASS("before a class", "goes on", "ends it", "a step back", Cell.NOTHING, Advice.CLASS),
    CLASS_QUESTION("asking a class", "tells", "ends it", "a step back", Cell.HELPS, Advice.CLASS),
    CONSENT("yes is wanted", "goes on without", "goes on without", Cell.NOTHING, Cell.NOTHING, ""),
    OPEN_CELL("unfinished Java", "twice leaves it", "leaves it", "is Java", "is Java", ""),
    LONG_ANSWER("a long answer", "shows more", "leaves the rest", "a screen back", "leaves the rest", "");

    /** What {@code quit} does in every mode. */
    public static final String QUIT = "leaves, and keeps your place";

    private final String where;
    private final String enter;
    private final String skip;
    private final String back;
    private final String hint;
    private final String advice;

    LineMode(String where, String enter, String skip, String back, String hint, String advice) {
        this.where = where;
        this.enter = enter;
        this.skip = skip;
        this.back = back;
        this.hint = hint;
        this.advice = advice;
    }

    /** Cells that come more than once. */
    private static final class Cell {
        static final String NOTHING = "–";
        static final String HELPS = "helps";
    }

    /** What to do, for whoever asks in so many words. */
    private static final class Advice {
        static final String REST = "Type music, such as Am7, F C G or D major, and see what it is; play F C G sounds it."
                + " lessons lists what can be learnt, help all the rest.";
        static final String NAMES = "If you call the white keys A B C D E F G, press Enter."
                + " If one of them is H to you, type german; if they are La Si Do, type latin.";
        static final String LESSON = "A lesson is open: Enter goes on with it. play hears the last example again,"
                + " help lists what else there is.";
        static final String CLASS = "Enter goes on, back goes back, skip ends it.";
    }

    /** In two or three words. */
    public String where() {
        return where;
    }

    public String enter() {
        return enter;
    }

    public String skip() {
        return skip;
    }

    public String back() {
        return back;
    }

    public String hint() {
        return hint;
    }

    /** What to do here, in whole sentences; empty where an open question says it. */
    public String advice() {
        return advice;
    }

    /** Whether each answer that leaves the line in this mode says so, even one that a script gets. */
    boolean isAlwaysSaid() {
        return this == LESSON_PAGE || this == LESSON_JAVA || this == ANSWERED || this == LONG_ANSWER;
    }

    /** What Enter does, as a sentence. */
    public String row() {
        return "Enter " + enter + ".";
    }

    /** What Enter does, and what leaves and what helps. */
    String fullRow() {
        return "Enter " + enter + (skip.equals(Cell.NOTHING) || skip.equals(enter) ? "" : ", skip " + skip)
                + (hint.equals(Cell.HELPS) ? ", hint helps." : ".");
    }

    /** Whether a word does something here. */
    public static boolean isSomething(String cell) {
        return !cell.equals(Cell.NOTHING);
    }
}
