package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import monochord.notebook.AttachedFile;
import monochord.notebook.Exchange;
import monochord.notebook.Notebook;
import monochord.notebook.NotebookReader;
import monochord.shell.playback.Ear;
import monochord.shell.sitting.Sitting;
import monochord.shell.storage.Keeper;
import monochord.shell.verb.Verbs;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Replays each sitting of {@code transcripts-demo}, and types it into the real line reader besides. With {@code
 * -Dsittings.accept=true} the files are rewritten instead: then read every changed chord before it is committed.
 */
class SittingsTest {
    private static final Path DEMOS = Path.of("transcripts-demo");
    private static final Size SCREEN = Size.of(80, 24);

    @TempDir
    private Path home;

    private static List<Path> sittings() throws IOException {
        try (Stream<Path> files = Files.list(DEMOS)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void thereAreSittings() throws IOException {
        assertFalse(sittings().isEmpty());
    }

    private static Notebook notebook(Path file) {
        return NotebookReader.read(file).notebook().orElseThrow();
    }

    /** What was typed and what came back, wherever it stands. */
    private static List<Exchange> exchanges(Path file) {
        return notebook(file).exchanges().stream()
                .map(exchange -> new Exchange(0, exchange.isOpening(), exchange.typed(), exchange.answer()))
                .filter(exchange -> !exchange.isOpening())
                .toList();
    }

    /** The sitting in the README is part of one that is replayed here: word for word, in its order. */
    @Test
    void theSittingInTheReadmeIsPartOfOneOfThese() throws IOException {
        List<Exchange> shown = exchanges(Path.of("README.md"));
        assertTrue(shown.size() > 3, "only " + shown);
        assertTrue(sittings().stream().anyMatch(file -> holdsInOrder(exchanges(file), shown)), "of no one sitting");
    }

    private static boolean holdsInOrder(List<Exchange> played, List<Exchange> shown) {
        Iterator<Exchange> wanted = shown.iterator();
        Exchange next = wanted.next();
        for (Exchange piece : played) {
            if (piece.equals(next)) {
                if (!wanted.hasNext()) {
                    return true;
                }
                next = wanted.next();
            }
        }
        return false;
    }

    /** What a learner and a teacher do day by day stands in a sitting, and so is read before each release. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {"learn", "practise", "review", "progress", "present", "ask", "hear", "fit", "recolour", "voice"})
    void whatIsDoneEveryDayIsShown(String verb) throws IOException {
        List<String> lines = new ArrayList<>();
        for (Path file : sittings()) {
            exchanges(file).forEach(exchange -> lines.add(exchange.text()));
        }
        assertTrue(lines.stream().anyMatch(line -> line.matches(verb + "( .*)?")), verb + " is in no sitting");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sittings")
    void aSittingGoesAsItIsWritten(Path file) {
        int typed = notebook(file).exchanges().size();
        assertTrue(typed > 3, "only " + typed);
        String accept = Boolean.getBoolean("sittings.accept") ? " --accept" : "";
        Run run = Run.of("replay " + file + accept);
        if (accept.isEmpty()) {
            assertEquals(file + ": holds, " + typed + " lines.\n", run.result(0));
        } else {
            assertEquals(0, run.status(), run.out());
        }
        assertEquals(read(file), notebook(file).toString(), "byte for byte");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException gone) {
            throw new AssertionError(gone);
        }
    }

    /** Those in which nothing waits for a player at a keyboard, where any key that is typed ahead would stop it. */
    private static List<Path> typedAhead() throws IOException {
        return sittings().stream()
                .filter(file -> exchanges(file).stream()
                        .noneMatch(exchange -> exchange.text().startsWith("rehearse")))
                .toList();
    }

    /** The same lines typed into the real line reader, with keys that stay pressable until the sitting ends. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("typedAhead")
    void aSittingGoesTheSameAtATerminal(Path file) throws IOException {
        List<Exchange> written = notebook(file).exchanges();
        for (AttachedFile kept : files(file)) {
            Files.writeString(home.resolve(kept.name()), kept.text());
        }
        List<String> answers = play(written.stream()
                .filter(exchange -> !exchange.isOpening())
                .map(Exchange::text)
                .toList());
        assertEquals(
                written.stream().map(Exchange::answer).toList(),
                answers.stream().map(Exchange::settled).toList());
    }

    /** What a notebook keeps to be typed again. */
    private static List<AttachedFile> files(Path file) {
        return notebook(file).parts().stream()
                .filter(Notebook.NotebookProse.class::isInstance)
                .flatMap(part -> ((Notebook.NotebookProse) part).files().stream())
                .toList();
    }

    /** What is answered, the greeting first and then to each line. */
    private List<String> play(List<String> lines) throws IOException {
        List<String> answers = new ArrayList<>();
        byte[] typed = (String.join("\r", lines) + "\r").replace('\n', '\r').getBytes(StandardCharsets.UTF_8);
        try (PipedInputStream keys = new PipedInputStream(typed.length + 1);
                PipedOutputStream fingers = new PipedOutputStream(keys);
                Terminal terminal = terminal(keys)) {
            fingers.write(typed);
            prompt().converse(terminal, answers::add);
        }
        answers.removeIf(String::isEmpty); // a cell goes on
        return answers;
    }

    private static Terminal terminal(InputStream keys) throws IOException {
        Terminal terminal = TerminalBuilder.builder()
                .system(false)
                .streams(keys, new ByteArrayOutputStream())
                .type("dumb")
                .encoding(StandardCharsets.UTF_8)
                .build();
        terminal.setSize(SCREEN);
        return terminal;
    }

    private Prompt prompt() {
        long[] seed = {0};
        Surroundings around = new Surroundings(
                InputStream.nullInputStream(),
                new PrintStream(new ByteArrayOutputStream()),
                new PrintStream(new ByteArrayOutputStream()),
                true,
                true,
                Map.of("LANG", "C.UTF-8", "NO_COLOR", "1", "MONOCHORD_HOME", home.toString()),
                home,
                Path.of("lessons"),
                () -> ++seed[0],
                Ear.silent(),
                () -> 0,
                nowhere -> Keeper.inMemory(home.resolve(".class")));
        Verbs verbs = new Verbs();
        Sitting sitting = around.sitting();
        return new Prompt(around, verbs, sitting, new LineReading(verbs, sitting), around.look());
    }
}
