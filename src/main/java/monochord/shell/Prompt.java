package monochord.shell;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.file.OwnerOnly;
import monochord.shell.journal.Drafts;
import monochord.shell.line.LongAnswer;
import monochord.shell.livekeyboard.KeyboardFollower;
import monochord.shell.sitting.ClassTeaching;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Look;
import monochord.view.Statement;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.DumbTerminal;
import org.jline.utils.InfoCmp;
import org.jline.utils.Signals;

/** The prompt on a terminal. */
final class Prompt {
    /** As whoever reads a notebook would begin. */
    private static final String COMMAND = "./monochord";

    private final Surroundings around;
    private final Verbs verbs;
    private final Sitting sitting;
    private final LineReading reading;
    private final Look look;
    private final JournalWriting noting;
    private boolean toldHowToStop;
    private Phrase rowBefore = Phrase.NOTHING;

    Prompt(Surroundings around, Verbs verbs, Sitting sitting, LineReading reading, Look look) {
        this.around = around;
        this.verbs = verbs;
        this.sitting = sitting;
        this.reading = reading;
        this.look = look;
        this.noting = new JournalWriting(sitting);
    }

    /** Converses until the learner leaves. */
    int run() {
        Runtime.getRuntime().addShutdownHook(new Thread(sitting::leave));
        try (Terminal terminal = TerminalWindow.open(around.variable("TERM"))) {
            if (terminal instanceof DumbTerminal) {
                Signals.register("INT", () -> terminal.raise(Terminal.Signal.INT)); // it does not do so itself
            }
            converse(terminal, text -> {
                terminal.writer().write(text);
                terminal.writer().flush();
                sitting.cells().prepare();
            });
            return Answer.DONE;
        } catch (IOException broken) {
            around.err()
                    .println(Phrase.of(
                            "The terminal cannot be used: {0}", Phrase.typed(String.valueOf(broken.getMessage()))));
            return Answer.FAILED;
        } finally {
            sitting.leave();
        }
    }

    /**
     * Reads lines from the terminal and hands what is answered to {@code show}, the greeting first. Ctrl-C never ends the
     * sitting, not even while an answer is on its way.
     */
    void converse(Terminal terminal, Consumer<String> show) {
        terminal.handle(Terminal.Signal.INT, between -> stop());
        PromptReader reader = reader(terminal);
        TerminalStrip board = new TerminalStrip(
                reader, () -> window(terminal).lookNow(), window(terminal).draws());
        board.showBelow(() -> sitting.linePlace().underPrompt());
        sitting.stage().take(board);
        sitting.outside().watch(how -> show.accept(rendered(Statement.of(how), terminal)));
        sitting.stage().tell(new KeyboardFollower(sitting.stage().ear(), board));
        sitting.study().begin();
        sitting.startInteractive();
        sitting.cells().gather();
        greet(terminal, show);
        sitting.outside().drafts().ifPresent(drafts -> sitting.journal().keep(drafts.drafting()));
        sitting.stage().ear().warm();
        boolean open = true;
        while (open && !sitting.hasEnded()) {
            open = turn(board, terminal, show);
        }
        sitting.teaching().rehearsing().stop();
    }

    /** @return whether there is a window still */
    private boolean turn(TerminalStrip board, Terminal terminal, Consumer<String> show) {
        try {
            sitting.waits();
            String line = board.readLine(row(terminal) + mark());
            sitting.setDisplay(window(terminal).lookNow(), window(terminal).lines());
            Answer answer = reading.read(line);
            clearForClass(terminal);
            show.accept(rendered(inWindow(withNotice(answer), terminal), terminal));
            note(line, answer, terminal, show);
            return true;
        } catch (UserInterruptException interrupted) {
            show.accept(rendered(interrupted(), terminal));
            return true;
        } catch (EndOfFileException end) {
            boolean left = window(terminal).stands();
            if (left) {
                sitting.end();
            }
            return left;
        }
    }

    /** A class has one thing before it: what was there before is wiped off. */
    private void clearForClass(Terminal terminal) {
        boolean isNew =
                sitting.teaching().room().filter(ClassTeaching::takeNewPage).isPresent();
        if (isNew && window(terminal).draws()) {
            terminal.puts(InfoCmp.Capability.clear_screen);
            terminal.flush();
        }
    }

    /** An answer longer than the window comes screen by screen, where a window shows it. */
    private Answer inWindow(Answer answer, Terminal terminal) {
        StyledText text = answer.text(window(terminal).lookNow());
        if (!window(terminal).draws()
                || !LongAnswer.isTooLong(text, window(terminal).lines())) {
            return answer;
        }
        return sitting.linePlace()
                .instead(sitting.longAnswer()
                        .show(LongAnswer.of(text, window(terminal).lines())));
    }

    /** A greeting that asks something is noted, for the first line answers it. */
    private void greet(Terminal terminal, Consumer<String> show) {
        Answer greeting = greeting();
        show.accept(rendered(greeting, terminal));
        if (sitting.teaching().firstStart().questions().isPresent()) {
            sitting.journal().open(COMMAND, greeting);
        }
    }

    /** What is due and what comes next; and whether a sitting was broken off. */
    private Answer greeting() {
        Answer greeting = sitting.teaching().opening().greeting(sitting);
        boolean brokenOff =
                sitting.outside().drafts().flatMap(Drafts::brokenOff).isPresent();
        return brokenOff
                ? Answers.of(greeting, Statement.of(Phrase.of("A sitting was broken off; open draft brings it back.")))
                : greeting;
    }

    /** Notes it behind the answer, so that nobody waits for the disk with the answer unseen. */
    private void note(String line, Answer answer, Terminal terminal, Consumer<String> show) {
        noting.note(line, answer).ifPresent(told -> show.accept(rendered(Statement.of(told), terminal)));
    }

    /** The first time something sounds, it is said how to stop it. */
    private Answer withNotice(Answer answer) {
        if (toldHowToStop || sitting.stage().ear().heard().isEmpty()) {
            return answer;
        }
        toldHowToStop = true;
        return Answers.of(answer, Statement.of(Phrase.of("Any key stops it.").styled(Style.QUIET)));
    }

    /** Between the lines: what sounds, what is typed again and what the cell does. */
    private void stop() {
        sitting.outside().stop();
        hush();
        sitting.cells().stop();
    }

    private Answer interrupted() {
        stop();
        noting.leave();
        return sitting.cells().isOpen()
                ? sitting.cells().breakOff()
                : Statement.of(Phrase.of("Stopped. To leave, type quit or press ctrl-D."));
    }

    /** Where nothing can be drawn under the prompt, what Enter does stands before it when that has changed. */
    private String row(Terminal terminal) {
        Phrase row =
                window(terminal).draws() ? Phrase.NOTHING : sitting.linePlace().underPrompt();
        boolean isNews = !row.isEmpty() && !row.equals(rowBefore);
        rowBefore = row.isEmpty() ? rowBefore : row;
        return isNews
                ? Ansi.of(
                        Statement.of(row).text(window(terminal).lookNow()),
                        window(terminal).lookNow())
                : "";
    }

    /** A hollow mark where a cell goes on. */
    private String mark() {
        boolean open = sitting.cells().isOpen();
        return look.signs().isAscii() ? open ? "+ " : "> " : open ? "▹ " : "▸ ";
    }

    private PromptReader reader(Terminal terminal) {
        PromptReader reader = new PromptReader(
                terminal, this::sounds, this::hush, sitting.teaching().rehearsing()::takesOneKey);
        reader.remember(line ->
                sitting.teaching().room().map(room -> room.nameless(line)).orElse(line));
        reader.setParser(new CompletionParser());
        reader.setCompleter(new Completion(verbs, sitting));
        reader.setHighlighter(new VerbHighlighter(verbs, look));
        reader.option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.CASE_INSENSITIVE, true)
                .option(LineReader.Option.HISTORY_IGNORE_SPACE, false);
        history().ifPresent(file -> reader.setVariable(LineReader.HISTORY_FILE, file));
        return reader;
    }

    private TerminalWindow window(Terminal terminal) {
        return new TerminalWindow(terminal, look.naming(sitting.naming()));
    }

    private boolean sounds() {
        return sitting.stage().ear().heard().isPresent()
                || sitting.teaching().rehearsing().isRunning();
    }

    private void hush() {
        sitting.teaching().rehearsing().stop();
        sitting.stage().ear().stop();
    }

    /** The history's file, or none where its folder cannot be made: then lines are remembered for this sitting only. */
    private Optional<Path> history() {
        try {
            return Optional.of(OwnerOnly.file(OwnerOnly.folder(around.home()).resolve("history")));
        } catch (IOException | RuntimeException none) {
            return Optional.empty();
        }
    }

    /** The answer and an empty line, so that each exchange stands by itself. */
    private String rendered(Answer answer, Terminal terminal) {
        if (sitting.cells().isOpen()) {
            return "";
        }
        Look here = window(terminal).lookNow();
        return Ansi.of(answer.text(here), here) + (sitting.hasEnded() ? "" : "\n");
    }
}
