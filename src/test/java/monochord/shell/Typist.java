package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import monochord.shell.line.LineMode;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.Keeper;
import monochord.shell.verb.Verbs;
import monochord.sound.Performance;
import monochord.text.Phrase;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.utils.ScreenTerminal;

/** Sits at a terminal without a tty: presses keys, sees the screen, hears what is begun and stopped. */
final class Typist implements AutoCloseable {
    static final String ENTER = "\r";
    static final String TAB = "\t";
    static final String UP = "\33OA";
    static final String DOWN = "\33OB";
    static final String LEFT = "\33OD";
    static final String BACKSPACE = "\177";
    static final String CTRL_C = "\3";
    static final String CTRL_D = "\4";

    private final boolean isNew;
    private final String greeting;
    private int columns;
    private final ScreenTerminal.VirtualTerminal terminal;
    private final BlockingQueue<String> answers = new LinkedBlockingQueue<>();
    private final BlockingQueue<String> heard = new LinkedBlockingQueue<>();
    /** What stands between two looks at the screen, and between two keys that are pressed until something comes of it. */
    private static final long LOOK_MILLIS = 2;

    private static final long AGAIN_MILLIS = 1500;
    /** What is told meanwhile on a machine that has much to do; it is no answer. */
    private static final Pattern HOW_FAR = Pattern.compile("^(?:\\e\\[[0-9;]*m)*(?:Line|Recorded:) \\d+ of \\d+\\.");

    private final Thread sitting;
    private final Ear ear;
    private Sitting memory;
    private volatile Throwable fault;
    private boolean editing;

    Typist(int columns, int rows, Path home) throws IOException {
        this(columns, rows, home, null);
    }

    /** @param ear what is to be heard through; one that only notes what it is told if null */
    Typist(int columns, int rows, Path home, Ear ear) throws IOException {
        this(columns, rows, home, ear, false);
    }

    /** Somebody who starts for the first time. */
    static Typist newcomer(int columns, int rows, Path home) throws IOException {
        return new Typist(columns, rows, home, null, true);
    }

    private Typist(int columns, int rows, Path home, Ear ear, boolean isNew) throws IOException {
        this.isNew = isNew;
        this.columns = columns;
        this.ear = ear == null ? noting() : ear;
        terminal = ScreenTerminal.withTerminal("screen", "xterm-256color", columns, rows);
        Prompt prompt = prompt(home);
        sitting = new Thread(() -> converse(prompt), "sitting");
        sitting.setDaemon(true);
        sitting.start();
        greeting = answer();
    }

    private void converse(Prompt prompt) {
        try {
            prompt.converse(terminal.terminal(), text -> {
                terminal.terminal().writer().write(text);
                terminal.terminal().writer().flush();
                if (!HOW_FAR.matcher(text).find()) {
                    answers.add(text);
                }
            });
        } catch (RuntimeException | Error unexpected) {
            fault = unexpected;
        }
    }

    private Prompt prompt(Path home) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        Surroundings around = new Surroundings(
                InputStream.nullInputStream(),
                nowhere,
                nowhere,
                true,
                true,
                Map.of("LANG", "C.UTF-8", "TERM", "xterm-256color", "MONOCHORD_HOME", home.toString()),
                home,
                Run.OUR_LESSONS,
                () -> 7,
                ear,
                () -> 0,
                nowhereElse -> Keeper.inMemory());
        Verbs verbs = new Verbs();
        memory = around.sitting();
        if (!isNew) {
            memory.settings().keep("welcomed", "yes");
        }
        return new Prompt(around, verbs, memory, new LineReading(verbs, memory), around.look());
    }

    /** What is behind the prompt. */
    Sitting sitting() {
        return memory;
    }

    /** Gives the window another size, as a person does with the mouse. */
    void resizes(int newColumns, int newRows) {
        columns = newColumns;
        Size size = Size.of(newColumns, newRows);
        terminal.screen().setSize(size);
        terminal.terminal().setSize(size);
        terminal.terminal().raise(Terminal.Signal.WINCH);
    }

    /** From now on nothing comes from the keys. */
    void closesTheWindow() throws IOException {
        terminal.terminal().input().close();
    }

    private Ear noting() {
        return new Ear() {
            @Override
            public Phrase play(Performance performance) {
                heard.add("play");
                return Phrase.NOTHING;
            }

            @Override
            public void stop() {
                heard.add("stop");
            }

            @Override
            public void listenToTheEnd() {
                heard.add("listen");
            }
        };
    }

    /** What was said before the first prompt. */
    String greeting() {
        return greeting;
    }

    /** Presses keys once the prompt stands. */
    void press(String keys) {
        if (!editing) {
            waitFor(
                    () -> List.of("▸", "▹").contains(lastLine(line -> line.startsWith("▸") || line.startsWith("▹"))),
                    "▸");
            editing = true;
        }
        try {
            terminal.terminal().processInputBytes(keys.getBytes(StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }

    /** Presses keys behind what stands at the prompt already. */
    void pressOn(String keys) {
        editing = true;
        press(keys);
    }

    /** Types a line, and answers what came back as {@link #answer} does. */
    String types(String line) {
        press(line + ENTER);
        return answer();
    }

    /** Presses these keys again and again until there is an answer. */
    String answerTo(String keys) {
        while (answers.isEmpty()) {
            pause(AGAIN_MILLIS, keys);
            pressOn(keys);
        }
        return answer();
    }

    /** Types a line, and reads on by Enter to the end of a long answer. */
    String typesAndReads(String line) {
        StringBuilder all = new StringBuilder(types(line));
        while (sitting().mode() == LineMode.LONG_ANSWER) {
            all.append(' ').append(types(""));
        }
        return all.toString();
    }

    /** The next answer, on one line and without its colours. No line was too wide, and it holds no word of a programmer's. */
    String answer() {
        try {
            String answer = next();
            editing = false;
            String bare = answer.replaceAll("\33\\[[0-9;]*m", "");
            assertTrue(bare.lines().allMatch(text -> text.codePointCount(0, text.length()) <= columns), bare);
            assertTrue(List.of("Exception", "fault of ours", "java.").stream().noneMatch(bare::contains), bare);
            assertTrue(bare.chars().allMatch(c -> c == '\n' || !Character.isISOControl(c)), bare);
            return bare.strip().replaceAll("\\s+", " ");
        } catch (InterruptedException interrupted) {
            throw gaveUp("an answer");
        }
    }

    /** The next answer, or what there is to say of a sitting that broke before it gave one. */
    private String next() throws InterruptedException {
        String answer = null;
        while (answer == null) {
            answer = answers.poll(AGAIN_MILLIS, TimeUnit.MILLISECONDS);
            if (answer == null && !sitting.isAlive() && answers.isEmpty()) {
                throw gaveUp("an answer");
            }
        }
        return answer;
    }

    /** Waits until a line of a cell is asked for. */
    void seesTheCellGoOn() {
        waitFor(() -> atThePrompt().equals("▹"), "▹");
    }

    /** Waits until the line that is being typed is this, the mark before it; below it what Enter does may be said. */
    void seesAtThePrompt(String typed) {
        waitFor(() -> atThePrompt().equals(("▸ " + typed).stripTrailing()), "▸ " + typed);
    }

    /** Asks for the rest of a word until it is there, for a cell that is busy gives none. */
    void completes(String typed, String whole) {
        press(typed);
        while (!shows("▸ " + whole)) {
            press(TAB);
            for (long waited = 0; !shows("▸ " + whole) && waited < AGAIN_MILLIS; waited += LOOK_MILLIS) {
                pause(LOOK_MILLIS, whole);
            }
        }
    }

    private boolean shows(String line) {
        return atThePrompt().equals(line);
    }

    void sees(String text) {
        waitFor(() -> screen().contains(text), text);
    }

    /** Waits for what is to be seen, however long it takes; a sitting that has ended has shown all it will. */
    private void waitFor(BooleanSupplier seen, String what) {
        while (!seen.getAsBoolean()) {
            boolean over = !sitting.isAlive();
            if (over && !seen.getAsBoolean()) {
                throw gaveUp(what);
            }
            pause(LOOK_MILLIS, what);
        }
    }

    /** The last line, unless it says what Enter does: then the line before it. */
    private String atThePrompt() {
        return lastLine(line -> !line.isEmpty() && !line.startsWith("Enter "));
    }

    private void pause(long millis, String awaited) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException interrupted) {
            throw gaveUp(awaited);
        }
    }

    private AssertionError gaveUp(String awaited) {
        return new AssertionError("waited for <" + awaited + ">; the screen shows\n" + screen() + "\n" + fault);
    }

    private String lastLine(java.util.function.Predicate<String> wanted) {
        return screen().lines().filter(wanted).reduce("", (before, line) -> line);
    }

    String screen() {
        return terminal.screen().toString().lines().map(String::stripTrailing).collect(Collectors.joining("\n"));
    }

    List<String> heard() {
        List<String> all = new java.util.ArrayList<>();
        heard.drainTo(all);
        return all;
    }

    /** Waits for the sitting to end by itself. */
    void seesItEnd() throws InterruptedException {
        sitting.join();
        assertEquals(null, fault);
    }

    @Override
    public void close() throws IOException {
        terminal.terminal().close();
        try {
            sitting.join(); // it may still be writing its draft
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
