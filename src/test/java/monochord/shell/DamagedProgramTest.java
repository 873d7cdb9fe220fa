package monochord.shell;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A program of which a part is missing or damaged says in one line what to do. */
@Tag("attack")
class DamagedProgramTest {
    private static final String REMEDY =
            "). Remove the folder target beside the launcher and start again: it is built anew.\n";

    @TempDir
    private Path program;

    private Path main;
    private List<String> flags = List.of();

    /** The main class alone, without the rest of the program. */
    @BeforeEach
    void setUp() throws IOException {
        main = program.resolve("monochord/shell/Main.class");
        Files.createDirectories(main.getParent());
        try (InputStream compiled = Main.class.getResourceAsStream("Main.class")) {
            Files.copy(compiled, main);
        }
    }

    /** Starts it and gives its exit status and all that it said. */
    private String run(String... sentence) throws IOException, InterruptedException {
        String java = ProcessHandle.current().info().command().orElse("java");
        Process process = new ProcessBuilder(Stream.of(
                                Stream.of(java),
                                flags.stream(),
                                Stream.of("-cp", program.toString(), Main.class.getName()),
                                Stream.of(sentence))
                        .flatMap(words -> words)
                        .toList())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);
        return process.waitFor() + " " + said;
    }

    @Test
    @DisplayName("where a class is missing")
    void missing() throws Exception {
        assertEquals(
                "3 monochord: A part of the program is missing or damaged (monochord/shell/Program" + REMEDY,
                run("show", "C"));
    }

    @Test
    @DisplayName("where it was installed, and nothing can be built")
    void missingInAnImage() throws Exception {
        flags = List.of("-Dmonochord.image=true");
        assertEquals(
                "3 monochord: A part of the program is missing or damaged (monochord/shell/Program). Install it anew;"
                        + " what you have done so far stays.\n",
                run("show", "C"));
    }

    @Test
    @DisplayName("where a class is cut short")
    void cut() throws Exception {
        try (InputStream compiled = Program.class.getResourceAsStream("Program.class")) {
            byte[] whole = compiled.readAllBytes();
            Files.write(main.resolveSibling("Program.class"), Arrays.copyOf(whole, whole.length / 2));
        }
        assertEquals(
                "3 monochord: A part of the program is missing or damaged (Truncated class file" + REMEDY,
                run("show", "C"));
    }

    @Test
    @DisplayName("where a library is missing, at the line that needs it")
    void withoutLibraries() throws Exception {
        program = Path.of(
                Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        assertEquals("""
                3 A part of the program is missing or damaged (org/commonmark/node/Node). Remove
                the folder target beside the launcher and start again: it is built anew.
                """, run("learn", "1.1"));
    }
}
