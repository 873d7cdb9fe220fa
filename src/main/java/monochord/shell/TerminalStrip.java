package monochord.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import monochord.shell.playback.LiveStrip;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Look;
import monochord.view.Statement;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Size;
import org.jline.utils.AttributedString;

/**
 * The board of a terminal: a strip under the prompt, words above it, and lines that others enter.
 *
 * <p>In plain looks and on terminals that cannot move their cursor nothing is drawn. On a low screen the strip is left out
 * as well: the line and what is typed come first.
 */
final class TerminalStrip implements LiveStrip {
    private static final int NARROWEST = 20;
    private static final int MOST_LINES = 5;
    private static final int ROWS_FOR_THE_LINE = 3;

    private final PromptReader reader;
    private final Supplier<Look> look;
    private final boolean draws;
    private final Deque<String> entered = new ArrayDeque<>();
    private Thread waiting;
    private String typed = "";
    private boolean isSeen;

    /**
     * @param look how things look now, for windows change
     * @param draws whether the terminal can redraw a strip
     */
    TerminalStrip(PromptReader reader, Supplier<Look> look, boolean draws) {
        this.reader = reader;
        this.look = look;
        this.draws = draws;
    }

    @Override
    public void show(Function<Look, StyledText> picture) {
        if (draws) {
            reader.show(() -> safely(() -> drawn(picture)));
        }
    }

    /** A picture that cannot be drawn is left out: it is drawn in the midst of somebody's typing. */
    private static AttributedString safely(Supplier<AttributedString> drawing) {
        try {
            return drawing.get();
        } catch (RuntimeException fault) {
            return AttributedString.EMPTY;
        }
    }

    private AttributedString drawn(Function<Look, StyledText> picture) {
        Size size = reader.getTerminal().getSize();
        Look now = look.get();
        List<StyledLine> lines = picture.apply(now).lines();
        boolean fits = size.getColumns() >= NARROWEST
                && lines.size() <= MOST_LINES
                && size.getRows() >= lines.size() + ROWS_FOR_THE_LINE;
        return fits
                ? AttributedString.fromAnsi(
                        heavy(Ansi.of(new StyledText(lines), now).stripTrailing()))
                : AttributedString.EMPTY;
    }

    /** The display turns light rules into letters of another character set, which not every window turns back. */
    private static String heavy(String drawing) {
        return drawing.replace('─', '━').replace('┴', '┻');
    }

    /** Says this in one line under the prompt while nothing is drawn there. */
    void showBelow(Supplier<Phrase> row) {
        if (draws) {
            reader.showBelow(() -> safely(() -> below(row.get())));
        }
    }

    private AttributedString below(Phrase row) {
        Look now = look.get();
        StyledText said = Statement.of(row.styled(Style.QUIET)).text(now);
        return row.isEmpty() || said.lines().size() > 1
                ? AttributedString.EMPTY
                : AttributedString.fromAnsi(Ansi.of(said, now).stripTrailing());
    }

    @Override
    public void clear() {
        if (draws) {
            reader.show(null);
        }
    }

    @Override
    public void say(Answer answer) {
        Look now = look.get();
        reader.printAbove(Ansi.of(answer.text(now), now));
    }

    @Override
    public synchronized void enter(String line) {
        entered.add(line);
        if (waiting != null && entered.size() == 1) {
            reader.exchange(line).ifPresent(before -> {
                typed = before;
                isSeen = true;
            });
            waiting.interrupt();
        }
    }

    /**
     * The next line, typed or entered. What was being typed when another entered a line is there again next time.
     *
     * @throws UserInterruptException if the typist breaks off
     * @throws org.jline.reader.EndOfFileException if there are no more
     */
    String readLine(String mark) {
        if (!begins()) {
            return enteredLine(mark);
        }
        try {
            String line = reader.readLine(mark, null, (Character) null, kept());
            return hasExchanged() ? enteredLine(mark) : line;
        } catch (UserInterruptException broken) {
            if (!isInterrupted()) {
                throw broken;
            }
        } finally {
            ends();
        }
        return enteredLine(mark);
    }

    /** Whether a line is to be typed, for nobody has entered one. */
    private synchronized boolean begins() {
        waiting = entered.isEmpty() ? Thread.currentThread() : null;
        return waiting != null;
    }

    private synchronized String kept() {
        String before = typed;
        typed = "";
        return before;
    }

    /** Enter may come at the very moment at which another line was put in place of what was typed. */
    private synchronized boolean hasExchanged() {
        return isSeen;
    }

    private synchronized boolean isInterrupted() {
        return !entered.isEmpty();
    }

    /** No interrupt of ours reaches further than the reader. */
    private synchronized void ends() {
        waiting = null;
        if (!entered.isEmpty()) {
            Thread.interrupted();
        }
    }

    private synchronized String enteredLine(String mark) {
        String line = entered.remove();
        if (!isSeen) {
            reader.printAbove(mark + line);
        }
        isSeen = false;
        reader.getHistory().add(line);
        return line;
    }
}
