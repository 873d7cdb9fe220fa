package monochord.shell.sitting;

import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import monochord.cell.Cell;
import monochord.cell.CellReport;
import monochord.harmony.Music;
import monochord.text.Nearest;
import monochord.text.Phrase;
import monochord.text.SafeText;
import monochord.theory.note.Clause;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Refusal;

/**
 * The cells of Java of one sitting: gathers the lines of one until it is complete, runs it, plays what it wants to have
 * played, and puts its variables into the sentences of verbs.
 */
public final class Cells {
    /** Characters of a cell. */
    private static final int LONGEST = 10_000;

    private static final int LINES_THAT_LEAVE = 2;
    /** What the prompt needs to be drawn before anything else is started. */
    private static final int PROMPT_MILLIS = 60;

    private static final Pattern VARIABLE = Pattern.compile("(?<![\\w$])\\$([A-Za-z_]\\w*)");
    private static final String EXAMPLE = "var verse = \"F C G Ab\", then play $verse in C";

    private final Sitting sitting;
    private Supplier<Cell> source = Cell::none;
    private Cell cell = Cell.none();
    private volatile Cell another = Cell.none();
    private boolean gathering;
    private boolean preparing;
    private boolean ran;
    private String open = "";
    private int emptyLines;

    Cells(Sitting sitting) {
        this.sitting = sitting;
    }

    /** Tells where cells come from, and takes a new one. */
    public void takeFrom(Supplier<Cell> newSource) {
        source = newSource;
        take(newCell());
    }

    /** A new one, which whoever asks for it has to close. */
    public Cell newCell() {
        another = source.get();
        return another;
    }

    /** Runs Java there from now on; the cell before is closed. */
    public void take(Cell newCell) {
        if (newCell != cell) {
            cell.close();
        }
        cell = newCell;
        open = "";
    }

    /** The cell is somebody else's now, who will close it. */
    public Cell handOver() {
        Cell handed = cell;
        cell = Cell.none();
        return handed;
    }

    /** From now on a cell may go over several lines; before, each line is a whole one. */
    public void gather() {
        gathering = true;
    }

    /** Gets ready behind the prompt that is being drawn; more than once does no harm. */
    public void prepare() {
        if (!preparing) {
            preparing = true;
            Thread thread = new Thread(this::getReady, "cell's start");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void getReady() {
        try {
            Thread.sleep(PROMPT_MILLIS);
            cell.ready();
        } catch (InterruptedException leaving) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether the next line goes on with a cell. */
    public boolean isOpen() {
        return !open.isEmpty();
    }

    /** Whether the cell has something of this name. */
    public boolean holds(String name) {
        return cell.holds(name);
    }

    /** Whether any Java has been run here. */
    public boolean haveRun() {
        return ran;
    }

    /** The names of the cell's variables. */
    public Stream<String> variables() {
        return cell.variables().stream();
    }

    /** Whether this can be the beginning of Java, or a whole piece of it. */
    public boolean reads(String text) {
        return cell.extent(text) != Cell.Extent.NOT_JAVA;
    }

    /** Begins a cell, and runs it if it is whole. */
    public Answer begin(String text) {
        return gathering && cell.extent(text) == Cell.Extent.PART ? keepOpen(text) : run(text);
    }

    /** Goes on with the open cell; a second empty line leaves it. */
    public Answer goOn(String line) {
        emptyLines = line.isBlank() ? emptyLines + 1 : 0;
        if (emptyLines == LINES_THAT_LEAVE) {
            return breakOff();
        }
        String text = open + "\n" + line;
        return cell.extent(text) == Cell.Extent.PART ? keepOpen(text) : run(text);
    }

    private Answer keepOpen(String text) {
        if (text.length() > LONGEST) {
            open = "";
            return new Refusal(Phrase.of("A cell may have {0} characters; this one has more.", LONGEST), LONGEST + 1);
        }
        open = text;
        return new Answers(List.of());
    }

    /** Leaves the open cell. */
    public Answer breakOff() {
        String left = open;
        open = "";
        emptyLines = 0;
        return new Refusal(
                Phrase.of("The cell is left: it was not complete."),
                left.length() + 1,
                Phrase.of("To run it, type it again with its end."));
    }

    /** Runs a text as it stands, whole or not. */
    Answer run(String text) {
        open = "";
        emptyLines = 0;
        ran = true;
        CellReport report = cell.run(text, sitting.key());
        CellAnswers.lastMusic(report).ifPresent(sitting.stage()::remember);
        Answer answer = CellAnswers.of(report, text);
        return report.plays().isEmpty() ? answer : Answers.of(answer, play(report.plays()));
    }

    private Answer play(List<CellReport.Play> plays) {
        List<Music> music = plays.stream().map(CellReport.Play::music).toList();
        int tempo = plays.stream()
                .mapToInt(CellReport.Play::tempo)
                .filter(said -> said > 0)
                .findFirst()
                .orElse(0);
        CellReport.Play first = plays.get(0);
        return tempo > 0
                ? PlaybackInTurn.play(music, first.key(), tempo, sitting)
                : PlaybackInTurn.play(music, first.key(), sitting);
    }

    /**
     * A sentence with each {@code $name} replaced by what the variable of the cell would be typed as.
     *
     * @throws Unreadable if there is no such variable, or no verb could read it
     */
    public String filled(String sentence) {
        if (sentence.indexOf('$') < 0) {
            return sentence;
        }
        Matcher variable = VARIABLE.matcher(sentence);
        StringBuilder filled = new StringBuilder();
        while (variable.find()) {
            String name = variable.group(1);
            if (!cell.holds(name)) {
                throw refused(sentence, variable.start(), near(name));
            }
            String value = cell.typed(name)
                    .orElseThrow(() -> refused(
                            sentence,
                            variable.start(),
                            Clause.of("{0} is no music, text or number that a verb could read", name)));
            variable.appendReplacement(filled, Matcher.quoteReplacement(SafeText.oneLine(value)));
        }
        return variable.appendTail(filled).toString();
    }

    private Clause near(String name) {
        return Nearest.to(name, cell.variables())
                .map(known -> Clause.of("the cell has no {0}; did you mean ${1}", name, known))
                .orElseGet(() -> Clause.of("the cell has no {0}", name));
    }

    private static Unreadable refused(String sentence, int place, Clause why) {
        return Unreadable.because(sentence, place, "a sentence", why, EXAMPLE);
    }

    /** What could stand at the cursor of this line. */
    public Cell.Completions complete(String line, int cursor) {
        if (!isOpen()) {
            return cell.complete(line, cursor);
        }
        int before = open.length() + 1;
        Cell.Completions whole = cell.complete(open + "\n" + line, before + cursor);
        return new Cell.Completions(Math.max(0, whole.from() - before), whole.texts());
    }

    /** Stops what runs, here and in the last cell that somebody asked for; from another thread. */
    public void stop() {
        cell.stop();
        another.stop();
    }

    /** Ends what there is of it outside this JVM. */
    public void close() {
        cell.close();
    }
}
