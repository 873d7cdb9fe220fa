package monochord.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A checkout on a computer that passes for one with Windows, and what its launcher says and leaves there. */
abstract class WindowsCheckout {
    static final String ROOT = WindowsHouse.ROOT;
    static final String TARGET = ROOT + "target";
    static final String JDK = "C:\\Program Files (x86)\\jdk 17";
    static final String BUILDING = "monochord: building, which happens once and may take a minute.\n";
    static final String CHANGED = "monochord: the sources have changed, building again.\n";
    static final String DAMAGED = "monochord: a file of the last build is missing or damaged, building again.\n";
    static final String WAITING = "monochord: another start is building, waiting.\n";
    static final String FAILED = "monochord: the build failed; what Maven said is in \"" + TARGET + "\\build.log\".\n";
    static final String NEEDS = " Monochord needs a JDK 17 or newer: install one, or set JAVA_HOME to it.\n";

    /** The one who started it, or its window, is killed. */
    static final class Killed extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    record Run(int status, String out, String err) {
        /** What was said besides how far the build is. */
        String said() {
            return err.lines()
                    .filter(line -> !line.startsWith("monochord: building: "))
                    .map(line -> line + "\n")
                    .reduce("", String::concat);
        }
    }

    @TempDir
    private Path base;

    final Set<String> walked = new TreeSet<>();
    WindowsHouse house;
    private int houses;

    @BeforeEach
    void build() throws IOException {
        house = new WindowsHouse(base.resolve("drive" + ++houses));
        write(ROOT + "pom.xml", "<project/>");
        write(ROOT + "src\\main\\java\\Tune.java", "class Tune {}");
        jdk(JDK, "17.0.9");
        house.environment().put("JAVA_HOME", JDK);
    }

    void write(String file, String text) throws IOException {
        Files.createDirectories(house.path(file).getParent());
        Files.writeString(house.path(file), text);
    }

    void jdk(String folder, String version) throws IOException {
        write(folder + "\\bin\\java.exe", "");
        write(folder + "\\bin\\javac.exe", "");
        write(
                folder + "\\release",
                "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\nJAVA_VERSION_DATE=\"2\"\n");
    }

    void edit(String file) throws IOException {
        Files.setLastModifiedTime(house.path(file), FileTime.from(Instant.now().plusSeconds(3600)));
    }

    Run start() throws IOException {
        StringBuilder out = new StringBuilder();
        StringBuilder err = new StringBuilder();
        int status = new Batch(house, Files.readAllLines(Path.of("monochord.cmd")), "show C", walked).run(out, err);
        return new Run(status, out.toString(), err.toString());
    }

    long builds() throws IOException {
        return house.exists(ROOT + "builds")
                ? house.read(ROOT + "builds").lines().count()
                : 0;
    }

    /** It was started, and its status is handed on; what was started is whole, and nothing is left of how it was built. */
    void assertWhole(Run run) {
        assertEquals(7, run.status(), run.err());
        assertEquals(
                "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn8m -XX:-UsePerfData -Xshare:auto -Xlog:disable"
                        + " -XX:+IgnoreUnrecognizedVMOptions -XX:+AutoCreateSharedArchive \"-XX:SharedArchiveFile="
                        + TARGET + "\\monochord.jsa\"  -jar \"" + TARGET + "\\monochord.jar\" show C\n",
                run.out());
        assertEquals("3 monochord.jar\n6 lib\\chords.jar\n5 lib\\tunes.jar\n", house.read(TARGET + "\\stamp"));
        assertEquals("jar", house.read(TARGET + "\\monochord.jar"));
        assertEquals("chords", house.read(TARGET + "\\lib\\chords.jar"));
        assertEquals("tunes", house.read(TARGET + "\\lib\\tunes.jar"));
        for (String left : List.of("staged", "libraries", "lib\\old.jar")) {
            assertFalse(house.exists(TARGET + "\\" + left), left);
        }
    }

    void assertSays(int status, String message, Run run) {
        assertEquals(message, run.said());
        assertEquals(status, run.status());
        assertEquals(status == 7, !run.out().isEmpty());
    }

    void assertBuilds(String said) throws IOException {
        long before = builds();
        Run run = start();
        assertEquals(said, run.said());
        assertWhole(run);
        assertEquals(before + 1, builds());
        assertStarts();
    }

    void assertStarts() throws IOException {
        long before = builds();
        Run run = start();
        assertWhole(run);
        assertEquals("", run.err());
        assertEquals(before, builds());
    }
}
