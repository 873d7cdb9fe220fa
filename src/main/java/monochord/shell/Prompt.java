package monochord.shell;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import monochord.shell.answer.Answer;
import monochord.shell.answer.Look;
import monochord.shell.answer.Saying;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import monochord.theory.Signs;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.DumbTerminal;
import org.jline.utils.InfoCmp;
import org.jline.utils.Signals;

/** The prompt on a terminal. */
final class Prompt {
    private static final int USUAL_WIDTH = 80;
    private static final int USUAL_HEIGHT = 24;

    private final Surroundings around;
    private final Verbs verbs;
    private final Sitting sitting;
    private final Reading reading;
    private final Look look;

    Prompt(Surroundings around, Verbs verbs, Sitting sitting, Reading reading, Look look) {
        this.around = around;
        this.verbs = verbs;
        this.sitting = sitting;
        this.reading = reading;
        this.look = look;
    }

    /** Converses until the learner leaves. */
    int run() {
        Runtime.getRuntime().addShutdownHook(new Thread(sitting::leave));
        try (Terminal terminal = terminal()) {
            if (terminal instanceof DumbTerminal) {
                Signals.register("INT", () -> terminal.raise(Terminal.Signal.INT)); // it does not do so itself
            }
            converse(terminal, text -> {
                terminal.writer().write(text);
                terminal.writer().flush();
            });
            return Answer.DONE;
        } catch (IOException broken) {
            around.err().println("The terminal cannot be used: " + broken.getMessage());
            return Answer.FAILED;
        } finally {
            sitting.leave();
        }
    }

    /** Without the grapheme question, which costs a round trip and loses keys typed ahead. */
    private Terminal terminal() throws IOException {
        knowAtOnce(around.variable("TERM"));
        return TerminalBuilder.builder()
                .provider("jni")
                .graphemeCluster(false)
                .encoding(StandardCharsets.UTF_8)
                .build();
    }

    /** JLine knows the usual terminals itself, yet asks the system first, which starts a process. */
    private static void knowAtOnce(String type) {
        String known = InfoCmp.getDefaultInfoCmp(type);
        if (known != null) {
            InfoCmp.setLoadedInfoCmp(type, known);
        }
    }

    /**
     * Reads lines from the terminal and hands what is answered to {@code show}, the greeting first. Ctrl-C never ends the
     * sitting, not even while an answer is on its way.
     */
    void converse(Terminal terminal, Consumer<String> show) {
        terminal.handle(Terminal.Signal.INT, between -> sitting.stage().ear().stop());
        LineReader reader = reader(terminal);
        sitting.study().begin();
        show.accept(rendered(sitting.opening().greeting(), terminal));
        sitting.stage().ear().warm();
        while (!sitting.hasEnded()) {
            try {
                String line = reader.readLine(mark());
                sitting.faces(look(terminal), lines(terminal));
                show.accept(rendered(reading.read(line), terminal));
            } catch (UserInterruptException interrupted) {
                sitting.stage().ear().stop();
                show.accept(rendered(Saying.of("Stopped. To leave, type quit or press ctrl-D."), terminal));
            } catch (EndOfFileException end) {
                sitting.end();
            }
        }
    }

    private String mark() {
        return look.signs() == Signs.MUSIC ? "▸ " : "> ";
    }

    private LineReader reader(Terminal terminal) {
        LineReader reader = LineReaderBuilder.builder()
                .terminal(terminal)
                .appName("monochord")
                .parser(new Words())
                .completer(new Completion(verbs, sitting))
                .highlighter(new VerbHighlighter(verbs, look))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .option(LineReader.Option.CASE_INSENSITIVE, true)
                .option(LineReader.Option.HISTORY_IGNORE_SPACE, false)
                .build();
        history().ifPresent(file -> reader.setVariable(LineReader.HISTORY_FILE, file));
        return reader;
    }

    /** The history's file, or none where its folder cannot be made: then lines are remembered for this sitting only. */
    private Optional<Path> history() {
        try {
            return Optional.of(Files.createDirectories(around.home()).resolve("history"));
        } catch (IOException | RuntimeException none) {
            return Optional.empty();
        }
    }

    /** The answer and an empty line, so that each exchange stands by itself. */
    private String rendered(Answer answer, Terminal terminal) {
        Look here = look(terminal);
        return Ansi.of(answer.text(here), here) + (sitting.hasEnded() ? "" : "\n");
    }

    private Look look(Terminal terminal) {
        int columns = terminal.getSize().getColumns();
        return look.inWidth(columns > 0 ? columns : USUAL_WIDTH);
    }

    private static int lines(Terminal terminal) {
        int rows = terminal.getSize().getRows();
        return rows > 0 ? rows : USUAL_HEIGHT;
    }
}
