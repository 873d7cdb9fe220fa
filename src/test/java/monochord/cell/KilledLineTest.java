package monochord.cell;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import monochord.theory.Key;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A line that is killed takes its cell along, whatever that is doing. */
@Tag("attack")
class KilledLineTest {
    /** The line: says what its cell is, and then waits for one that never ends. */
    static final class Line {
        private Line() {}

        public static void main(String[] arguments) {
            try (Bench bench = new Bench()) {
                bench.says("1 + 1");
                System.out.println(bench.cell().pid());
                System.out.println(bench.cell().folder());
                bench.cell().run(arguments[0], Key.parse("C"));
            }
        }
    }

    /** The second keeps the JVM from ending itself. Guards: {@code RequestReader.read}; {@code OutsideWatch}. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "while (true) { try { Thread.sleep(1); } catch (Throwable caught) { } }",
                "synchronized (Class.forName(\"monochord.cell.sandbox.JvmExit\")) {"
                        + " while (true) { try { Thread.sleep(1); } catch (Throwable caught) { } } }"
            })
    void theCellDiesWithItsLine(String snippet) throws Exception {
        Process line = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Line.class.getName(),
                        snippet)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(line.getInputStream(), StandardCharsets.UTF_8))) {
            ProcessHandle cell =
                    ProcessHandle.of(Long.parseLong(said.readLine())).orElseThrow();
            Path folder = Path.of(said.readLine());
            assertTrue(cell.isAlive());
            assertTrue(Files.exists(folder));
            line.destroyForcibly().waitFor();
            cell.onExit().get();
            while (Files.exists(folder)) {
                Thread.sleep(10); // it goes a moment after the JVM
            }
        } finally {
            line.destroyForcibly();
        }
    }
}
