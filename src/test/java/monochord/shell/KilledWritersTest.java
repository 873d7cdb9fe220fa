package monochord.shell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import monochord.Thorough;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole programs are killed at any moment while they write over a file: it is the old one or the new one, never a part. */
@Tag("attack")
class KilledWritersTest {
    private static final int KILLS = Thorough.times(1, 60);
    private static final String OLD = "what stood there before\n";
    private static final String NOTEBOOK =
            "# Tuesday\n\n```console\n▸ show C\nwrong\n\n▸ numeral Ab in C\nwrong\n```\n";

    @TempDir
    private Path folder;

    private Process program(String sentence) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Djava.awt.headless=true",
                "-Dmonochord.terminals=",
                "--add-exports=java.desktop/com.sun.media.sound=ALL-UNNAMED",
                "-cp",
                classPath(),
                Main.class.getName()));
        command.addAll(List.of(sentence.split(" ")));
        ProcessBuilder program = new ProcessBuilder(command).directory(folder.toFile());
        program.environment().put("MONOCHORD_HOME", folder.resolve("home").toString());
        program.environment()
                .put("MONOCHORD_LESSONS", Run.OUR_LESSONS.toAbsolutePath().toString());
        return program.redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static String classPath() {
        return String.join(
                ":",
                Arrays.stream(System.getProperty("java.class.path").split(":"))
                        .map(entry -> Path.of(entry).toAbsolutePath().toString())
                        .toList());
    }

    private void put(Path file) throws IOException {
        Files.writeString(file, file.toString().endsWith(".md") ? NOTEBOOK : OLD);
    }

    /** What the verb makes of the file when nobody disturbs it, and how long that takes. */
    private long whole(Path file, String sentence) throws IOException, InterruptedException {
        put(file);
        long began = System.nanoTime();
        program(sentence).waitFor();
        return System.nanoTime() - began;
    }

    @Thorough.FirstOf(4)
    @ParameterizedTest
    @ValueSource(
            strings = {
                "play F C G Am F C G C loop 8 --wav FILE.wav --over",
                "publish 5.1 --html FILE.html --over",
                "replay FILE.md --accept",
                "chart F C G C in C --pdf FILE.pdf --over"
            })
    @DisplayName("a file is the old one or the new one, whenever its writer is killed")
    void aFileIsOldOrNew(String said) throws IOException, InterruptedException {
        String sentence = said.replace("FILE", "out");
        Path file = folder.resolve(said.replaceAll(".*FILE(\\.\\w+).*", "out$1"));
        long nanos = whole(file, sentence);
        byte[] before = (file.toString().endsWith(".md") ? NOTEBOOK : OLD).getBytes(StandardCharsets.UTF_8);
        byte[] made = Files.readAllBytes(file);
        assertTrue(!Arrays.equals(before, made), "nothing was written");
        Random chance = new Random(said.hashCode());
        for (int kill = 0; kill < KILLS; kill++) {
            put(file);
            Process program = program(sentence);
            program.waitFor((long) (nanos * (0.3 + 0.8 * chance.nextDouble())), TimeUnit.NANOSECONDS);
            program.destroyForcibly().waitFor();
            byte[] found = Files.readAllBytes(file);
            if (!Arrays.equals(before, found)) {
                assertArrayEquals(made, found, "neither the old file nor the new one");
            }
        }
        whole(file, sentence);
        assertArrayEquals(made, Files.readAllBytes(file));
        assertEquals(List.of(), strangers(file));
    }

    /** Whatever lies there but the file, the home and parts of it, which are swept when they are old. */
    private List<String> strangers(Path file) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString())
                    .filter(name -> !name.equals(file.getFileName().toString())
                            && !name.equals("home")
                            && !name.matches("\\.out\\.\\w+\\.\\d+-\\d+\\.part"))
                    .toList();
        }
    }
}
