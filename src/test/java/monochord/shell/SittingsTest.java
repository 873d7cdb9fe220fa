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
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import monochord.shell.sitting.Ear;
import monochord.shell.sitting.Keeper;
import monochord.shell.sitting.Sitting;
import monochord.shell.verb.Verbs;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Types each sitting of {@code transcripts-demo} into the real line reader, with fixed seed, width and home and without
 * sound, and compares all that comes back. With {@code -Dsittings.accept=true} the files are rewritten instead: then read
 * every changed chord before it is committed.
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

    /** The sitting in the README is part of one that is replayed here. */
    @Test
    void theSittingInTheReadmeIsOneOfThese() throws IOException {
        List<WrittenSitting.Piece> played = new ArrayList<>();
        for (Path file : sittings()) {
            played.addAll(WrittenSitting.parse(Files.readAllLines(file)).exchanges());
        }
        List<WrittenSitting.Piece> shown =
                WrittenSitting.parse(Files.readAllLines(Path.of("README.md"))).exchanges();
        assertTrue(shown.size() > 3, "only " + shown);
        assertEquals(
                List.of(),
                shown.stream().filter(piece -> !played.contains(piece)).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sittings")
    void aSittingGoesAsItIsWritten(Path file) throws IOException {
        WrittenSitting written = WrittenSitting.parse(Files.readAllLines(file));
        assertTrue(written.typed().size() > 3, "only " + written.typed());
        WrittenSitting played = written.answered(play(written.typed()));
        if (Boolean.getBoolean("sittings.accept")) {
            Files.writeString(file, played.toString());
        }
        assertEquals(played.toString(), Files.readString(file));
    }

    /** What is answered, the greeting first and then to each line. The keys stay pressable until the sitting ends. */
    private List<String> play(List<String> lines) throws IOException {
        List<String> answers = new ArrayList<>();
        byte[] typed = (String.join("\r", lines) + "\r").getBytes(StandardCharsets.UTF_8);
        try (PipedInputStream keys = new PipedInputStream(typed.length + 1);
                PipedOutputStream fingers = new PipedOutputStream(keys);
                Terminal terminal = terminal(keys)) {
            fingers.write(typed);
            prompt().converse(terminal, answers::add);
        }
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
                nowhere -> Keeper.inMemory());
        Verbs verbs = new Verbs();
        Sitting sitting = around.sitting();
        return new Prompt(around, verbs, sitting, new Reading(verbs, sitting), around.look());
    }
}
